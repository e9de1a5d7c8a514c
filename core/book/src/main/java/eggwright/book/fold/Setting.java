package eggwright.book.fold;

import eggwright.book.entry.EggsSet;
import eggwright.book.entry.LoadSet;
import eggwright.book.entry.Scope;
import eggwright.book.picture.DiscrepancyKind;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import eggwright.book.picture.Place;
import java.util.ArrayList;

/** Trays that went into the heat. */
final class Setting {
    private final Loads loads;
    private final Whereabouts where;
    private final SetStories stories;
    private final Doubts doubts;

    Setting(Loads loads, Whereabouts where, SetStories stories, Doubts doubts) {
        this.loads = loads;
        this.where = where;
        this.stories = stories;
        this.doubts = doubts;
    }

    void set(Effective entry, EggsSet it) {
        stories.start(it.set(), entry);
        for (var load : it.loads()) {
            var ref = new LoadRef(it.set(), load.tray());
            var state = loads.get(ref);
            if (state == null) {
                state = new LoadState(ref, stories.setOn(it.set()), entry.instant());
                loads.put(state);
            } else {
                doubts.add(
                        DiscrepancyKind.TRAY_TWICE,
                        entry,
                        Scope.ofLoad(ref.set(), ref.tray()),
                        load.eggs(),
                        state.eggsSet());
            }
            if (state.places.isEmpty() && load.machine() != null) {
                state.places.add(new Place(entry.instant(), load.machine(), load.section(), load.position()));
            }
            fill(state, load);
        }
    }

    private void fill(LoadState state, LoadSet load) {
        var alike = new ArrayList<ParcelId>();
        int eggs = 0;
        for (var lot : load.lots()) {
            var id = new ParcelId(state.ref, state.parcels.size());
            var parcel = new Parcel(id, lot, state.setOn, load.machine(), load.section());
            state.parcels.add(parcel);
            where.put(parcel);
            if (lot.canBeToldApart()) {
                where.set(Parcels.of(id), state.ref, lot.eggs());
            } else {
                alike.add(id);
                eggs += lot.eggs();
            }
        }
        if (!alike.isEmpty()) {
            where.set(new Parcels(alike), state.ref, eggs);
        }
    }
}
