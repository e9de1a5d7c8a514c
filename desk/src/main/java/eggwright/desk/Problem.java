package eggwright.desk;

/**
 * Shown instead of a page: what happened, what was kept, what to do.
 *
 * @param onward where to do it
 * @param onwardLabel what stands on the way there
 */
public record Problem(String title, String happened, String doNext, String onward, String onwardLabel) {
    /** The same for a script or a sensor, which show it to a person. */
    public static String json(String title, String happened, String doNext) {
        return new Problem(title, happened, doNext, "", "").json();
    }

    String json() {
        return "{\"title\":" + quoted(title) + ",\"happened\":" + quoted(happened) + ",\"doNext\":" + quoted(doNext)
                + "}";
    }

    private static String quoted(String text) {
        var out = new StringBuilder("\"");
        text.chars().forEach(sign -> {
            if (sign == '"' || sign == '\\') {
                out.append('\\').append((char) sign);
            } else if (sign < ' ') {
                out.append(String.format("\\u%04x", sign));
            } else {
                out.append((char) sign);
            }
        });
        return out.append('"').toString();
    }
}
