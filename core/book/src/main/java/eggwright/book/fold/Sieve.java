package eggwright.book.fold;

import eggwright.book.entry.Scope;
import eggwright.book.picture.LoadRef;
import eggwright.book.picture.Parcel;
import eggwright.book.picture.ParcelId;
import eggwright.book.picture.Parcels;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Picks what a count speaks of. */
final class Sieve {
    /** A basket is filled within these days, and used again every week (common practice, no source). */
    static final Duration BASKET_FILLED_WITHIN = Duration.ofDays(4);

    private final Scope scope;
    private final Map<ParcelId, Parcel> parcels;
    private final @Nullable LoadRef load;
    private @Nullable Instant basketFilledFrom;

    Sieve(Scope scope, Map<ParcelId, Parcel> parcels) {
        this.scope = scope;
        this.parcels = parcels;
        this.load = scope.set() == null || scope.tray() == null ? null : new LoadRef(scope.set(), scope.tray());
    }

    /** The basket as it was last filled, among these. */
    Sieve lastFilling(Iterable<? extends Counted> all) {
        for (var counted : all) {
            for (var spot : counted.spots()) {
                var since = spot.inBasketsSince();
                if (since != null && takes(spot, null)) {
                    var from = since.minus(BASKET_FILLED_WITHIN);
                    if (basketFilledFrom == null || from.isAfter(basketFilledFrom)) {
                        basketFilledFrom = from;
                    }
                }
            }
        }
        return this;
    }

    private boolean takes(Spot spot, @Nullable Instant filledFrom) {
        if (load != null) {
            if (!load.equals(spot.load())) {
                return false;
            }
        } else if (scope.set() != null && !scope.set().equals(spot.load().set())) {
            return false;
        }
        if (scope.basket() != null) {
            if (!spot.baskets().contains(scope.basket())) {
                return false;
            }
            if (filledFrom != null
                    && spot.inBasketsSince() != null
                    && spot.inBasketsSince().isBefore(filledFrom)) {
                return false;
            }
        }
        return scope.pen() == null || anyOfPen(spot.of());
    }

    /** Which of all these the count speaks of, each with the part of it that is meant. */
    <T extends Counted> List<Named<T>> of(Iterable<T> all) {
        var found = new ArrayList<Named<T>>();
        for (var counted : all) {
            var spots = mine(counted.spots());
            if (!spots.isEmpty()) {
                var of = narrowed(counted, spots);
                if (of.isPresent()) {
                    found.add(new Named<>(counted, spots, of.get()));
                }
            }
        }
        return found;
    }

    private List<Spot> mine(List<Spot> spots) {
        if (spots.size() == 1) {
            return takes(spots.getFirst(), basketFilledFrom) ? spots : List.of();
        }
        var mine = new ArrayList<Spot>(spots.size());
        for (var spot : spots) {
            if (takes(spot, basketFilledFrom)) {
                mine.add(spot);
            }
        }
        return mine.size() == spots.size() ? spots : mine;
    }

    private Optional<Parcels> narrowed(Counted counted, List<Spot> mine) {
        var of = mine.size() == counted.spots().size()
                ? Optional.of(counted.of())
                : counted.of().within(Spot.parcels(mine));
        return scope.pen() == null ? of : of.flatMap(parcels -> parcels.only(this::isOfPen));
    }

    private boolean anyOfPen(Parcels of) {
        for (var id : of) {
            if (isOfPen(id)) {
                return true;
            }
        }
        return false;
    }

    private boolean isOfPen(ParcelId id) {
        var parcel = parcels.get(id);
        return parcel != null
                && scope.pen() != null
                && scope.pen().equals(parcel.lot().pen());
    }
}
