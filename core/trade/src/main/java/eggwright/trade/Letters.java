package eggwright.trade;

/** How far one word is from another. */
final class Letters {
    private Letters() {}

    /** The fewest letters to add, drop or change (Levenshtein 1966, Soviet Physics Doklady 10:707). */
    static int changed(String from, String to) {
        var row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int above = row[j];
                int swap = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(swap, 1 + Math.min(above, row[j - 1]));
                diagonal = above;
            }
        }
        return row[to.length()];
    }
}
