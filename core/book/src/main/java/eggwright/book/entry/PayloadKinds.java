package eggwright.book.entry;

import java.util.Map;
import java.util.Optional;

/** The kinds that this version knows, by their words. */
public final class PayloadKinds {
    private static final Map<String, Class<? extends Payload>> BY_WORD = Map.ofEntries(
            Map.entry("pen-opened", PenOpened.class),
            Map.entry("pen-changed", PenChanged.class),
            Map.entry("pen-closed", PenClosed.class),
            Map.entry("machine-added", MachineAdded.class),
            Map.entry("machine-changed", MachineChanged.class),
            Map.entry("machine-cleaned", MachineCleaned.class),
            Map.entry("machine-use-changed", MachineUseChanged.class),
            Map.entry("eggs-gathered", EggsGathered.class),
            Map.entry("eggs-received", EggsReceived.class),
            Map.entry("eggs-sold", EggsSold.class),
            Map.entry("eggs-eaten", EggsEaten.class),
            Map.entry("eggs-discarded", EggsDiscarded.class),
            Map.entry("eggs-counted", EggsCounted.class),
            Map.entry("eggs-set", EggsSet.class),
            Map.entry("looked", Looked.class),
            Map.entry("second-look-asked", SecondLookAsked.class),
            Map.entry("eggs-moved", EggsMoved.class),
            Map.entry("load-placed", LoadPlaced.class),
            Map.entry("weighed", Weighed.class),
            Map.entry("climate-noted", ClimateNoted.class),
            Map.entry("sensor-compared", SensorCompared.class),
            Map.entry("sensor-trust-changed", SensorTrustChanged.class),
            Map.entry("readings-released", ReadingsReleased.class),
            Map.entry("transferred", Transferred.class),
            Map.entry("taken-off", TakenOff.class),
            Map.entry("broken-out", BrokenOut.class),
            Map.entry("chicks-placed", ChicksPlaced.class),
            Map.entry("chicks-died", ChicksDied.class),
            Map.entry("chicks-sold", ChicksSold.class),
            Map.entry("incident", IncidentNoted.class),
            Map.entry("chicks-ordered", ChicksOrdered.class),
            Map.entry("order-cancelled", OrderCancelled.class),
            Map.entry("chicks-delivered", ChicksDelivered.class),
            Map.entry("farm-habits", HabitsNoted.class),
            Map.entry("species-override", SpeciesOverridden.class),
            Map.entry("remark", Remarked.class),
            Map.entry("replaced", Replaced.class),
            Map.entry("withdrawn", Withdrawn.class));

    private PayloadKinds() {}

    /** The record of a kind; empty where the word is not known. */
    public static Optional<Class<? extends Payload>> byWord(String word) {
        return Optional.ofNullable(BY_WORD.get(word));
    }

    public static java.util.Set<String> words() {
        return BY_WORD.keySet();
    }
}
