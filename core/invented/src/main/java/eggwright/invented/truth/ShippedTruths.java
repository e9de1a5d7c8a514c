package eggwright.invented.truth;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Truths that come with the program, as texts to start from. */
public final class ShippedTruths {
    private static final List<String> NAMES = List.of(
            "default",
            "failing-cock",
            "dry-section",
            "power-cut",
            "careless-evenings",
            "pooled-and-mixed",
            "outside-the-family");

    private ShippedTruths() {}

    public static List<String> names() {
        return NAMES;
    }

    /** The text of one; empty where there is none of that name. */
    public static Optional<String> text(String name) {
        if (!NAMES.contains(name)) {
            return Optional.empty();
        }
        try (var stream = ShippedTruths.class.getResourceAsStream(name + ".truth")) {
            if (stream == null) {
                throw new IllegalStateException("The truth " + name + " is missing from this program");
            }
            return Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
