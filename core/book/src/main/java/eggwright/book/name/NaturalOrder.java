package eggwright.book.name;

/** Orders texts as people do: runs of digits by their value, the rest letter by letter; equal only when the texts are equal. */
public final class NaturalOrder {
    private NaturalOrder() {}

    public static int compare(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int endA = digitsEnd(a, i);
            int endB = digitsEnd(b, j);
            int order;
            if (endA > i && endB > j) {
                order = compareDigits(a.substring(i, endA), b.substring(j, endB));
                i = endA;
                j = endB;
            } else {
                order = Character.compare(a.charAt(i), b.charAt(j));
                i++;
                j++;
            }
            if (order != 0) {
                return order;
            }
        }
        int order = Integer.compare(a.length() - i, b.length() - j);
        return order != 0 ? order : a.compareTo(b);
    }

    private static int digitsEnd(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    private static int compareDigits(String a, String b) {
        var left = a.replaceFirst("^0+(?=.)", "");
        var right = b.replaceFirst("^0+(?=.)", "");
        int order = Integer.compare(left.length(), right.length());
        return order != 0 ? order : left.compareTo(right);
    }
}
