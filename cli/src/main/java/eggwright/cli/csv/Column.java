package eggwright.cli.csv;

import eggwright.cli.voice.Refused;
import java.util.List;

/**
 * One column of a file, each word kept once.
 *
 * @param name as the header has it
 * @param words that stand in it, in the order in which they first do
 * @param wordOfRow by row, the place in {@code words}
 * @param firstLine by word, the line in which it first stands, the header being 1
 */
public record Column(CsvFile file, String name, List<String> words, int[] wordOfRow, int[] firstLine) {
    private static final double LARGEST_WHOLE = 1e15;

    /** A word as a number; not a number where it is none. */
    private static double parsed(String word) {
        // Java also reads "NaN", "Infinity", "0x1p3" and "1d"; a person means none of them.
        if (word.isEmpty() || word.chars().anyMatch(c -> Character.isLetter(c) && c != 'e' && c != 'E')) {
            return Double.NaN;
        }
        try {
            double number = Double.parseDouble(word);
            return Math.abs(number) <= LARGEST_WHOLE ? number : Double.NaN;
        } catch (NumberFormatException notNumber) {
            return Double.NaN;
        }
    }

    /** Whether every word is a number, so that the order of the rows cannot matter. */
    public boolean isNumeric() {
        return !words.isEmpty() && words.stream().noneMatch(word -> Double.isNaN(parsed(word)));
    }

    /** Numbers by row. */
    public double[] numbers() {
        return numbersOr(Double.NaN);
    }

    /** Numbers by row, and another for empty cells. */
    public double[] numbersOr(double forEmpty) {
        double[] ofWord = new double[words.size()];
        for (int word = 0; word < ofWord.length; word++) {
            ofWord[word] = words.get(word).isEmpty() ? forEmpty : parsed(words.get(word));
            if (Double.isNaN(ofWord[word])) {
                throw wrong(word, "a number", "0.95, with a point");
            }
        }
        double[] numbers = new double[wordOfRow.length];
        for (int row = 0; row < numbers.length; row++) {
            numbers[row] = ofWord[wordOfRow[row]];
        }
        return numbers;
    }

    /** Whole numbers by row, each 0 to {@code most}. */
    public int[] wholes(int most) {
        int[] ofWord = new int[words.size()];
        for (int word = 0; word < ofWord.length; word++) {
            double number = parsed(words.get(word));
            if (number != Math.rint(number)) {
                throw wrong(word, "a whole number", "54");
            }
            if (number < 0 || number > most) {
                throw refused(word, "which is outside 0 to " + most + ".");
            }
            ofWord[word] = (int) number;
        }
        int[] wholes = new int[wordOfRow.length];
        for (int row = 0; row < wholes.length; row++) {
            wholes[row] = ofWord[wordOfRow[row]];
        }
        return wholes;
    }

    private Refused wrong(int word, String wanted, String example) {
        return refused(word, "which is not " + wanted + ". Write it like " + example + ".");
    }

    private Refused refused(int word, String what) {
        return file.refused("has \"" + CsvFile.shortened(words.get(word)) + "\" in row " + firstLine[word]
                + ", column \"" + name + "\", " + what);
    }
}
