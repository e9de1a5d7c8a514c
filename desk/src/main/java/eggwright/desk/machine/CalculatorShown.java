package eggwright.desk.machine;

import java.util.List;

/**
 * The pocket calculator for moist air.
 *
 * @param kept what else the address holds, so that asking leaves the rest of the page as it is
 * @param fields as they were typed
 * @param answers empty until something was asked that has an answer
 */
public record CalculatorShown(List<Kept> kept, List<Field> fields, List<OneMachinePage.Figure> answers) {
    public CalculatorShown {
        kept = List.copyOf(kept);
        fields = List.copyOf(fields);
        answers = List.copyOf(answers);
    }

    /** A part of the address. */
    public record Kept(String name, String value) {}

    /**
     * What is typed.
     *
     * @param message what is to be mended; empty where nothing is
     */
    public record Field(String name, String label, String hint, String value, String message) {}
}
