package eggwright.desk.device;

/**
 * Where a device joins.
 *
 * @param message what is to be mended; empty where nothing is
 */
public record JoinPage(String code, String name, String message) {}
