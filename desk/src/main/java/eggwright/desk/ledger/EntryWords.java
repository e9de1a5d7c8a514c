package eggwright.desk.ledger;

import eggwright.book.entry.*;
import eggwright.book.name.Name;
import eggwright.desk.words.Words;
import eggwright.trade.ProfileField;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** One line for each kind of note: what happened, in a few words. */
public final class EntryWords {
    private final Words words;

    public EntryWords(Locale language) {
        this.words = Words.beside(EntryWords.class, language);
    }

    public String line(Payload payload) {
        return switch (payload) {
            case PenOpened it -> say("pen-opened", it.pen(), words.species(it.species()), it.cocks(), it.hens());
            case PenChanged it -> say("pen-changed." + word(it.change()), it.pen(), it.cocks(), it.hens());
            case PenClosed it -> say("pen-closed", it.pen());
            case MachineAdded it -> say("machine-added", it.machine());
            case MachineChanged it -> say("machine-changed", it.machine());
            case MachineCleaned it -> say("machine-cleaned", place(it.machine(), it.section()));
            case MachineUseChanged it -> say("machine-use-changed." + word(it.use()), it.machine());
            case EggsGathered it -> say("eggs-gathered", pen(it.pen()), it.kept(), it.rejectedCount());
            case EggsReceived it -> say("eggs-received", it.keptAs(), it.eggs());
            case EggsSold it -> say("eggs-sold", pen(it.pen()), it.eggs());
            case EggsEaten it -> say("eggs-eaten", pen(it.pen()), it.eggs());
            case EggsDiscarded it -> say("eggs-discarded", pen(it.pen()), it.eggs());
            case EggsCounted it -> say("eggs-counted", pen(it.pen()), it.eggs());
            case EggsSet it -> say("eggs-set", it.set(), it.loads().size(), it.eggs());
            case Looked it -> say("looked", scope(it.scope()), findings(it));
            case SecondLookAsked it ->
                say("second-look-asked", it.set(), it.trays().size());
            case EggsMoved it ->
                say("eggs-moved", it.fromSet(), it.fromTray(), it.toSet(), it.toTray(), eggs(it.eggs()));
            case LoadPlaced it -> say("load-placed", it.set(), it.tray(), place(it.machine(), it.section()));
            case Weighed it -> say("weighed", it.set(), it.tray(), it.gross(), it.eggs());
            case ClimateNoted it -> say("climate-noted", place(it.machine(), it.section()), climate(it));
            case SensorCompared it -> say("sensor-compared", sensor(it.sensor()), correction(it));
            case SensorTrustChanged it -> say("sensor-trust-changed." + word(it.trust()), sensor(it.sensor()));
            case ReadingsReleased it -> say("readings-released", sensor(it.sensor()));
            case Transferred it -> say("transferred", sets(it), it.eggs().size());
            case TakenOff it -> say("taken-off." + word(it.pull()), scope(it.counted()), it.saleable(), it.culled());
            case BrokenOut it -> say("broken-out", scope(it.scope()), it.opened());
            case ChicksPlaced it -> say("chicks-placed", it.chicks(), it.brooder());
            case ChicksDied it -> say("chicks-died", it.chicks(), it.brooder());
            case ChicksSold it -> say("chicks-sold", it.chicks());
            case IncidentNoted it -> say("incident." + word(it.what()), it.text());
            case ChicksOrdered it ->
                say(
                        "chicks-ordered",
                        it.order(),
                        it.chicks(),
                        words.species(it.species()),
                        it.day().toString());
            case OrderCancelled it -> say("order-cancelled", it.order());
            case ChicksDelivered it -> say("chicks-delivered", it.buyer(), it.chicks());
            case HabitsNoted it -> say("farm-habits");
            case SpeciesOverridden it ->
                say("species-override", words.species(it.species()), field(it.field()), it.value());
            case Remarked it -> say("remark", it.text());
            case Replaced it -> say("replaced", line(it.with()));
            case Withdrawn it -> say("withdrawn", it.why());
            case UnknownPayload it -> say("unknown", it.kind());
        };
    }

    /** An older or a newer program may know fields that this one does not. */
    private String field(String word) {
        return ProfileField.ofWord(word).map(words::field).orElse(word);
    }

    private String say(String key, @Nullable Object... arguments) {
        var texts = new Object[arguments.length];
        for (int i = 0; i < arguments.length; i++) {
            var argument = arguments[i];
            texts[i] = argument instanceof Name name
                    ? name.text()
                    : argument == null ? "" : argument instanceof Number ? argument : argument.toString();
        }
        return words.say("line." + key, texts);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private String pen(eggwright.book.name.@Nullable PenName pen) {
        return pen == null ? words.say("noPen") : words.say("pen", pen.text());
    }

    private String eggs(@Nullable Integer eggs) {
        return eggs == null ? words.say("allEggs") : words.say("eggs", eggs);
    }

    private static String place(Name machine, eggwright.book.name.@Nullable SectionName section) {
        return section == null ? machine.text() : machine.text() + ", " + section.text();
    }

    /** Which eggs a count speaks of. */
    public String scope(Scope scope) {
        var parts = new ArrayList<String>();
        if (scope.set() != null) {
            parts.add(words.say("set", scope.set().text()));
        }
        if (scope.tray() != null) {
            parts.add(words.say("tray", scope.tray().text()));
        }
        if (scope.basket() != null) {
            parts.add(words.say("basket", scope.basket().text()));
        }
        if (scope.pen() != null) {
            parts.add(words.say("pen", scope.pen().text()));
        }
        return String.join(", ", parts);
    }

    private String findings(Looked look) {
        var parts = new ArrayList<String>();
        for (var count : look.findings()) {
            if (count.seen() > 0) {
                parts.add(words.say("finding." + count.finding().word(), count.seen()));
            }
        }
        if (look.removedUnsorted() > 0) {
            parts.add(words.say("finding.unsorted", look.removedUnsorted()));
        }
        return parts.isEmpty() ? words.say("finding.nothing") : String.join(", ", parts);
    }

    private static String climate(ClimateNoted it) {
        var parts = new ArrayList<String>();
        if (it.dry() != null) {
            parts.add(it.dry().toString());
        }
        if (it.wet() != null) {
            parts.add(it.wet().toString());
        }
        if (it.humidity() != null) {
            parts.add(Math.round(it.humidity().pct()) + "\u00a0%");
        }
        return String.join(" / ", parts);
    }

    /** As "logger in Setter, humidity". */
    public String sensor(SensorAt sensor) {
        var machine = sensor.machine();
        return words.say(
                "sensor." + word(sensor.place()),
                sensor.sensor(),
                machine == null ? "" : machine.text(),
                words.say("quantity." + sensor.quantity().word()));
    }

    private String correction(SensorCompared it) {
        var add = it.add();
        return add == null
                ? words.say("compared", String.valueOf(it.showed()), String.valueOf(it.reference()))
                : words.say("offBy", add.toString());
    }

    private static String sets(Transferred it) {
        List<String> sets =
                it.eggs().stream().map(t -> t.set().text()).distinct().toList();
        return String.join(", ", sets);
    }
}
