package eggwright.desk.intake;

import eggwright.desk.form.Field;

/**
 * Where a logger's file is chosen.
 *
 * @param message what is to be mended; empty where nothing is
 */
public record BringPage(String message, Field place) {}
