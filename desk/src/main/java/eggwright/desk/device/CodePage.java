package eggwright.desk.device;

/**
 * A code, shown once.
 *
 * @param code as it is read out
 * @param drawing of the address with the code in it
 * @param address where it is typed
 * @param until when it can be used
 */
public record CodePage(String code, String drawing, String address, String until, String role, String firstSteps) {}
