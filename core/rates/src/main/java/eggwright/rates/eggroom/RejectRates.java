package eggwright.rates.eggroom;

import eggwright.book.name.NaturalOrder;
import eggwright.book.picture.Picture;
import eggwright.rates.Dimension;
import eggwright.units.Rate;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Eggs put aside at gathering, of all gathered. Eggs discarded later from the egg room are not among them, for they were
 * fit once; bought eggs were not gathered here.
 */
public final class RejectRates {
    private static final Comparator<Place> ORDER = Comparator.<Place, String>comparing(
                    Place::pen, NaturalOrder::compare)
            .thenComparing(Place::week);

    private RejectRates() {}

    private record Place(String pen, String week) {}

    public static List<RejectRate> byPen(Picture picture) {
        return by(picture, pen -> pen, day -> Dimension.ALL);
    }

    public static List<RejectRate> byWeek(Picture picture) {
        return by(picture, pen -> Dimension.ALL, Dimension::week);
    }

    public static List<RejectRate> byPenAndWeek(Picture picture) {
        return by(picture, pen -> pen, Dimension::week);
    }

    /** Over all pens and weeks; 0 of 0 where nothing was gathered. */
    public static Rate total(Picture picture) {
        return by(picture, pen -> Dimension.ALL, day -> Dimension.ALL).stream()
                .map(RejectRate::rejected)
                .reduce(new Rate(0, 0), Rate::plus);
    }

    private static List<RejectRate> by(
            Picture picture, Function<String, String> penKey, Function<LocalDate, String> weekKey) {
        var sums = new TreeMap<Place, Rate>(ORDER);
        for (var shelf : picture.eggRoom().values()) {
            var pen = shelf.key().pen() == null
                    ? Dimension.NOT_RECORDED
                    : shelf.key().pen().text();
            shelf.gathered()
                    .forEach((day, gathered) -> sums.merge(
                            new Place(penKey.apply(pen), weekKey.apply(day)),
                            new Rate(gathered.rejected(), (long) gathered.kept() + gathered.rejected()),
                            Rate::plus));
        }
        return sums.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .map(e -> new RejectRate(e.getKey().pen(), e.getKey().week(), e.getValue()))
                .toList();
    }
}
