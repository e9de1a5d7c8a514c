package eggwright.desk.part;

import java.util.Optional;

/**
 * Something said at the top of a page.
 *
 * @param tone how it is marked; the words say it too
 * @param text what happened, what was kept, what to do
 * @param next where to do it; empty where there is nothing to do
 */
public record NoticeShown(Tone tone, String text, Optional<Next> next) {
    /** Where to go on, as "Mend it". */
    public record Next(String path, String label) {}

    /** What kind of thing is said. */
    public enum Tone {
        /** Stored. */
        KEPT,
        /** Wants a look. */
        LOOK,
        /** Not stored. */
        REFUSED;

        /** The class in the style sheet. */
        public String style() {
            return switch (this) {
                case KEPT -> "notice-kept";
                case LOOK -> "notice-look";
                case REFUSED -> "notice-refused";
            };
        }
    }

    public static NoticeShown kept(String text) {
        return new NoticeShown(Tone.KEPT, text, Optional.empty());
    }

    public static NoticeShown look(String text) {
        return new NoticeShown(Tone.LOOK, text, Optional.empty());
    }

    public static NoticeShown refused(String text) {
        return new NoticeShown(Tone.REFUSED, text, Optional.empty());
    }

    public NoticeShown then(String path, String label) {
        return new NoticeShown(tone, text, Optional.of(new Next(path, label)));
    }
}
