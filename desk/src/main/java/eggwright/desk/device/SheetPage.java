package eggwright.desk.device;

import eggwright.desk.network.FirstSteps;

/**
 * The sheet that is printed and hung up.
 *
 * @param drawing of where a device begins
 */
public record SheetPage(FirstSteps steps, String drawing) {}
