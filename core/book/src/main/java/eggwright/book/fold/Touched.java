package eggwright.book.fold;

import eggwright.book.entry.*;
import eggwright.book.name.MachineName;
import eggwright.book.name.PenName;
import eggwright.book.picture.ShelfKey;
import eggwright.trade.Species;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which parts of the picture an entry touches: the only place that knows. */
final class Touched {
    private final Set<Part> parts = new LinkedHashSet<>();

    private Touched() {}

    /** A basket named without a set touches the sets that went into it, which the ledger knows. */
    static Set<Part> by(Payload payload, Origin origin) {
        var touched = new Touched();
        touched.look(payload, origin);
        return touched.parts;
    }

    private void look(Payload payload, Origin origin) {
        switch (payload) {
            case PenOpened it -> pen(it.pen());
            case PenChanged it -> pen(it.pen());
            case PenClosed it -> pen(it.pen());
            case MachineAdded it -> machine(it.machine());
            case MachineChanged it -> machine(it.machine());
            case MachineCleaned it -> machine(it.machine());
            case MachineUseChanged it -> machine(it.machine());
            case ClimateNoted it -> machine(it.machine());
            case SensorCompared it -> parts.add(new Part.Sensor(it.sensor()));
            case SensorTrustChanged it -> parts.add(new Part.Sensor(it.sensor()));
            case ReadingsReleased it -> parts.add(new Part.Sensor(it.sensor()));
            case EggsGathered it -> shelf(it.pen(), it.species());
            case EggsReceived it -> shelf(it.keptAs(), it.species());
            case EggsSold it -> shelf(it.pen(), it.species());
            case EggsEaten it -> shelf(it.pen(), it.species());
            case EggsDiscarded it -> shelf(it.pen(), it.species());
            case EggsCounted it -> shelf(it.pen(), it.species());
            case EggsSet it -> set(it, origin);
            case Looked it -> scope(it.scope());
            case SecondLookAsked it -> parts.add(new Part.Set(it.set()));
            case EggsMoved it -> {
                parts.add(new Part.Set(it.fromSet()));
                parts.add(new Part.Set(it.toSet()));
                machine(it.machine());
            }
            case LoadPlaced it -> {
                parts.add(new Part.Set(it.set()));
                machine(it.machine());
            }
            case Weighed it -> parts.add(new Part.Set(it.set()));
            case Transferred it -> {
                it.eggs().forEach(t -> parts.add(new Part.Set(t.set())));
                machine(it.hatcher());
            }
            case TakenOff it -> scope(it.counted());
            case BrokenOut it -> scope(it.scope());
            case ChicksOrdered it -> parts.add(new Part.Order(it.order()));
            case OrderCancelled it -> parts.add(new Part.Order(it.order()));
            case ChicksDelivered it -> {
                if (it.order() != null) {
                    parts.add(new Part.Order(it.order()));
                }
                parts.add(Part.FARM);
            }
            case ChicksPlaced it -> parts.add(Part.FARM);
            case ChicksDied it -> parts.add(Part.FARM);
            case ChicksSold it -> parts.add(Part.FARM);
            case IncidentNoted it -> parts.add(Part.FARM);
            case HabitsNoted it -> parts.add(Part.FARM);
            case SpeciesOverridden it -> parts.add(Part.FARM);
            case Remarked it -> parts.add(Part.FARM);
            case UnknownPayload it -> {
                // Kept for a later version; it touches nothing that this one knows.
            }
            case Replaced it -> {
                // Mends are resolved before the fold.
            }
            case Withdrawn it -> {
                // Mends are resolved before the fold.
            }
        }
    }

    private void set(EggsSet it, Origin origin) {
        parts.add(new Part.Set(it.set()));
        for (var load : it.loads()) {
            machine(load.machine());
            for (var lot : load.lots()) {
                pen(lot.pen());
                if (origin == Origin.NOTED) {
                    // Rows of a past season come without the egg room's gatherings.
                    shelf(lot.pen(), lot.species());
                }
            }
        }
    }

    private void scope(Scope scope) {
        if (scope.set() != null) {
            parts.add(new Part.Set(scope.set()));
        }
    }

    private void pen(@Nullable PenName pen) {
        if (pen != null) {
            parts.add(new Part.Pen(pen));
        }
    }

    private void shelf(@Nullable PenName pen, Species species) {
        parts.add(new Part.Shelf(new ShelfKey(pen, species)));
        pen(pen);
    }

    private void machine(@Nullable MachineName machine) {
        if (machine != null) {
            parts.add(new Part.Machine(machine));
        }
    }
}
