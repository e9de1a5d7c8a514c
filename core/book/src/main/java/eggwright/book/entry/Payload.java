package eggwright.book.entry;

/** What one kind of entry says. One record for each kind; a new kind is added here and then wherever the build stops. */
public sealed interface Payload
        permits PenOpened,
                PenChanged,
                PenClosed,
                MachineAdded,
                MachineChanged,
                MachineCleaned,
                MachineUseChanged,
                EggsGathered,
                EggsReceived,
                EggsSold,
                EggsEaten,
                EggsDiscarded,
                EggsCounted,
                EggsSet,
                Looked,
                SecondLookAsked,
                EggsMoved,
                LoadPlaced,
                Weighed,
                ClimateNoted,
                SensorCompared,
                SensorTrustChanged,
                ReadingsReleased,
                Transferred,
                TakenOff,
                BrokenOut,
                ChicksPlaced,
                ChicksDied,
                ChicksSold,
                IncidentNoted,
                ChicksOrdered,
                OrderCancelled,
                ChicksDelivered,
                HabitsNoted,
                SpeciesOverridden,
                Remarked,
                Replaced,
                Withdrawn,
                UnknownPayload {
    /** The word of this kind, as written in files. */
    default String kindWord() {
        return switch (this) {
            case PenOpened it -> "pen-opened";
            case PenChanged it -> "pen-changed";
            case PenClosed it -> "pen-closed";
            case MachineAdded it -> "machine-added";
            case MachineChanged it -> "machine-changed";
            case MachineCleaned it -> "machine-cleaned";
            case MachineUseChanged it -> "machine-use-changed";
            case EggsGathered it -> "eggs-gathered";
            case EggsReceived it -> "eggs-received";
            case EggsSold it -> "eggs-sold";
            case EggsEaten it -> "eggs-eaten";
            case EggsDiscarded it -> "eggs-discarded";
            case EggsCounted it -> "eggs-counted";
            case EggsSet it -> "eggs-set";
            case Looked it -> "looked";
            case SecondLookAsked it -> "second-look-asked";
            case EggsMoved it -> "eggs-moved";
            case LoadPlaced it -> "load-placed";
            case Weighed it -> "weighed";
            case ClimateNoted it -> "climate-noted";
            case SensorCompared it -> "sensor-compared";
            case SensorTrustChanged it -> "sensor-trust-changed";
            case ReadingsReleased it -> "readings-released";
            case Transferred it -> "transferred";
            case TakenOff it -> "taken-off";
            case BrokenOut it -> "broken-out";
            case ChicksPlaced it -> "chicks-placed";
            case ChicksDied it -> "chicks-died";
            case ChicksSold it -> "chicks-sold";
            case IncidentNoted it -> "incident";
            case ChicksOrdered it -> "chicks-ordered";
            case OrderCancelled it -> "order-cancelled";
            case ChicksDelivered it -> "chicks-delivered";
            case HabitsNoted it -> "farm-habits";
            case SpeciesOverridden it -> "species-override";
            case Remarked it -> "remark";
            case Replaced it -> "replaced";
            case Withdrawn it -> "withdrawn";
            case UnknownPayload it -> it.kind();
        };
    }
}
