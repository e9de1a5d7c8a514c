package eggwright.desk.part;

/**
 * A caution beside the work it belongs to: short, never a dose, with whom to ask.
 *
 * @param title as "Rotten eggs can burst"
 * @param text one or two sentences
 * @param ask the authority that decides, as "Your vet, and your country's rules on carcasses"
 */
public record CautionShown(String title, String text, String ask) {}
