package eggwright.sheet.logger;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Finds out how a file writes its times. */
final class Times {
    private Times() {}

    /** Every form in which all of some times can be read. */
    static Set<TimeForm> forms(List<String> written) {
        var forms = EnumSet.noneOf(TimeForm.class);
        if (written.isEmpty()) {
            return forms;
        }
        for (var form : TimeForm.values()) {
            if (written.stream().allMatch(w -> form.read(w).isPresent())) {
                forms.add(form);
            }
        }
        return forms;
    }

    /**
     * Of forms that all can be read, those that the order of the rows speaks for: a logger steps evenly, so the right
     * form has no step longer than the whole of what the other gives.
     */
    static Set<TimeForm> likely(Set<TimeForm> forms, List<String> written) {
        if (forms.size() < 2 || written.size() < 3) {
            return forms;
        }
        long best = Long.MAX_VALUE;
        var likely = EnumSet.noneOf(TimeForm.class);
        for (var form : forms) {
            long longest = longestStep(form, written);
            if (longest < best) {
                likely.clear();
                best = longest;
            }
            if (longest == best) {
                likely.add(form);
            }
        }
        return likely;
    }

    private static long longestStep(TimeForm form, List<String> written) {
        var times = new ArrayList<Long>(written.size());
        for (var one : written) {
            form.read(one).ifPresent(w -> times.add(w.local().toEpochSecond(java.time.ZoneOffset.UTC)));
        }
        long longest = 0;
        for (int i = 1; i < times.size(); i++) {
            longest = Math.max(longest, Math.abs(times.get(i) - times.get(i - 1)));
        }
        return longest;
    }
}
