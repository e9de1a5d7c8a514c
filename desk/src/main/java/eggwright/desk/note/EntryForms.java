package eggwright.desk.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every form, one for each kind of entry that a person notes. Mends have pages of their own. */
final class EntryForms {
    private static final List<EntryForm> ALL = all(
            EggForms.ALL,
            SettingForms.ALL,
            LampForms.ALL,
            HatchForms.ALL,
            PenForms.ALL,
            MachineForms.ALL,
            SensorForms.ALL,
            ChickForms.ALL,
            FarmForms.ALL);

    private EntryForms() {}

    @SafeVarargs
    private static List<EntryForm> all(List<EntryForm>... shelves) {
        var all = new ArrayList<EntryForm>();
        for (var shelf : shelves) {
            all.addAll(shelf);
        }
        return List.copyOf(all);
    }

    static List<EntryForm> all() {
        return ALL;
    }

    /** The form of a kind; empty where there is none. */
    static Optional<EntryForm> of(String kind) {
        return ALL.stream().filter(f -> f.kind().equals(kind)).findFirst();
    }
}
