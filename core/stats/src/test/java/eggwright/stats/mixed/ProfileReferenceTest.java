package eggwright.stats.mixed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.stats.ReferenceTable;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against confint by profile of R's lme4 1.1-31. */
class ProfileReferenceTest {
    /** lme4 draws a spline through some twenty points of the profile and reads the ends off it. */
    private static final double AS_A_SPLINE = 2e-3;

    @ParameterizedTest
    @ValueSource(strings = {"GM01", "GM05", "GM07", "GM10", "GM15", "GM18"})
    void intervals_agreeWithR(String id) {
        var model = id.equals("GM18")
                ? PublishedModels.salamanders()
                : Objects.requireNonNull(PublishedModels.all().get(id));
        var intervals = model.profiled(1, 0.95).deviations();
        for (var row : ReferenceTable.ofCase(ReferenceTable.read("mixed/mixed_profiles_expected.csv"), id)) {
            var names = model.random().stream().map(Grouping::name).toList();
            var ours = intervals.get(names.indexOf(row.text("group")));
            assertEquals(row.number("low"), ours.low(), AS_A_SPLINE, id + " low of " + row.text("group"));
            assertEquals(row.number("high"), ours.high(), AS_A_SPLINE, id + " high of " + row.text("group"));
        }
        assertTrue(intervals.size() == model.random().size());
    }
}
