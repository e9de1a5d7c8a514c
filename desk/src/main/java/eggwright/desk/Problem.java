package eggwright.desk;

/** Shown instead of a page: what happened, what was kept, what to do. */
public record Problem(String title, String happened, String doNext) {
    /** The same for a script, which shows it to a person. */
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
