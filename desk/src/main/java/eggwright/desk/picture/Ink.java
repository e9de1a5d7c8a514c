package eggwright.desk.picture;

import java.util.Locale;

/** A pattern and its colour. The patterns differ in black alone; no two that stand side by side look alike. */
public enum Ink {
    CLEAR("grey", ""),
    DEAD_EARLY(
            "blood",
            "<circle class=\"fill\" cx=\"2\" cy=\"2\" r=\"1\"/><circle class=\"fill\" cx=\"6\" cy=\"6\" r=\"1\"/>"),
    DEAD_MIDDLE("blood", "<path class=\"line\" d=\"M-2 2 2 -2M0 8 8 0M6 10 10 6\"/>"),
    DEAD_LATE("blood", "<path class=\"line\" d=\"M-1 1 1 -1M-1 5 5 -1M-1 9 9 -1M3 9 9 3M7 9 9 7\"/>"),
    PIPPED("blood", "<path class=\"line\" d=\"M0 8 8 0M0 0 8 8\"/>"),
    IN_BASKET("blood", "<path class=\"line\" d=\"M0 2h8M0 6h8\"/>"),
    SPOILT("grey", "<path class=\"line\" d=\"M-2 6 2 10M0 0 8 8M6 -2 10 2\"/>"),
    CULLED("grey", "<path class=\"line\" d=\"M2 0v8M6 0v8\"/>"),
    SALEABLE("olive", "<rect class=\"fill\" width=\"8\" height=\"8\"/>"),
    STILL_IN("shell", "<circle class=\"line\" cx=\"4\" cy=\"4\" r=\"2\"/>"),
    UNACCOUNTED("amber", "<path class=\"line\" d=\"M4 1v6M1 4h6\"/>"),
    /** Known only together with eggs that are not in the bar. */
    WITH_OTHERS("grey", "<circle class=\"fill\" cx=\"4\" cy=\"4\" r=\"1\"/>");

    private final String tone;
    private final String drawing;

    Ink(String tone, String drawing) {
        this.tone = tone;
        this.drawing = drawing;
    }

    /** The class that colours it. */
    String tone() {
        return tone;
    }

    String fill(String pictureId) {
        return "fill=\"url(#" + patternId(pictureId) + ")\"";
    }

    String pattern(String pictureId) {
        return "<pattern id=\"" + patternId(pictureId) + "\" class=\"" + tone
                + "\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\"><rect class=\"paper\" width=\"8\""
                + " height=\"8\"/>" + drawing + "</pattern>";
    }

    /** A small drawing of it for a key. */
    String swatch(String pictureId) {
        return "<svg width=\"24\" height=\"16\" aria-hidden=\"true\"><rect class=\"edge\" x=\"0.5\" y=\"0.5\" width=\"23\""
                + " height=\"15\" " + fill(pictureId) + "/></svg>";
    }

    private String patternId(String pictureId) {
        return pictureId + "-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
