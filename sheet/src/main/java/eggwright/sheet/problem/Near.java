package eggwright.sheet.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The known word nearest to one that was mistyped. */
public final class Near {
    /** A longer text is no mistyped word, and would cost time to compare. */
    private static final int LONGEST = 60;

    private Near() {}

    /** The known word of which at most a third of the letters differ; empty where none is near. */
    public static Optional<String> to(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        return known.stream()
                .filter(candidate -> distance(word, candidate) * 3 <= Math.max(word.length(), candidate.length()))
                .min(Comparator.comparingInt((String candidate) -> distance(word, candidate))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** Letters to change, add or leave out (Levenshtein 1966, Soviet Physics Doklady 10:707). */
    private static int distance(String one, String other) {
        var above = new int[other.length() + 1];
        for (int j = 0; j < above.length; j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            var row = new int[above.length];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int changed = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[above.length - 1];
    }
}
