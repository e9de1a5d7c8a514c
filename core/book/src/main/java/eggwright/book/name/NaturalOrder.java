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
                order = compareDigits(a, i, endA, b, j, endB);
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

    private static int compareDigits(String a, int fromA, int endA, String b, int fromB, int endB) {
        int i = withoutNoughts(a, fromA, endA);
        int j = withoutNoughts(b, fromB, endB);
        int order = Integer.compare(endA - i, endB - j);
        while (order == 0 && i < endA) {
            order = Character.compare(a.charAt(i++), b.charAt(j++));
        }
        return order;
    }

    /** Where the digits begin that count; the last digit always does. */
    private static int withoutNoughts(String text, int from, int end) {
        int begin = from;
        while (begin < end - 1 && text.charAt(begin) == '0') {
            begin++;
        }
        return begin;
    }
}
