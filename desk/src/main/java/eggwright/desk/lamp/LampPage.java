package eggwright.desk.lamp;

/**
 * The lamp page. It holds nothing of the farm, for it lies on the phone.
 *
 * @param words every text of the page, as JSON
 */
public record LampPage(String title, String words, String noScript) {}
