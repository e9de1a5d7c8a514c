package eggwright.desk.device;

/**
 * Where the owner's passphrase is set.
 *
 * @param message what is to be mended; empty where nothing is
 * @param kept what was kept; empty where nothing was yet
 */
public record PassphrasePage(String message, String kept) {}
