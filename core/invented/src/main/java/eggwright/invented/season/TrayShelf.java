package eggwright.invented.season;

import eggwright.invented.truth.SectionTruth;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The numbered trays and their places in the setter. A place is free again once its load has been transferred. */
final class TrayShelf {
    private final List<Spot> spots = new ArrayList<>();

    TrayShelf(Farm farm) {
        var setter = farm.truth.setter();
        var sections = farm.truth.sectionsOf(setter);
        for (int i = 0; i < setter.trayPlaces(); i++) {
            spots.add(new Spot(i + 1, sections.get(i % sections.size()), i / sections.size() + 1));
        }
    }

    /** One tray in its place. */
    static final class Spot {
        final int tray;
        final SectionTruth section;
        final int position;
        private LocalDate freeFrom = LocalDate.MIN;

        Spot(int tray, SectionTruth section, int position) {
            this.tray = tray;
            this.section = section;
            this.position = position;
        }

        void takenUntil(LocalDate day) {
            freeFrom = day.plusDays(1);
        }
    }

    int free(LocalDate on) {
        return (int) spots.stream().filter(s -> !s.freeFrom.isAfter(on)).count();
    }

    /** The tray that has been free longest, so that each week's trays spread over the sections. */
    Optional<Spot> next(LocalDate on) {
        return spots.stream()
                .filter(s -> !s.freeFrom.isAfter(on))
                .min(java.util.Comparator.comparing((Spot s) -> s.freeFrom).thenComparingInt(s -> s.tray));
    }
}
