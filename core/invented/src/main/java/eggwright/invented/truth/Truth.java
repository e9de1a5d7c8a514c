package eggwright.invented.truth;

import eggwright.book.entry.MachineKind;
import eggwright.trade.Species;
import eggwright.units.OutOfRange;
import java.util.List;

/**
 * What is true of the invented farm before anybody counts. {@link #PLAIN} is a believable small pheasant farm with two
 * pens of chukar; its levels are invented, near the trade's published ones.
 */
public record Truth(
        FarmTruth farm,
        SeasonTruth season,
        List<PenTruth> pens,
        List<PenEventTruth> events,
        List<LossTruth> losses,
        TrendTruth trend,
        ScatterTruth scatter,
        BurstTruth burst,
        EggRoomTruth eggRoom,
        List<MachineTruth> machines,
        List<SectionTruth> sections,
        TrayTruth trays,
        List<PowerCutTruth> powerCuts,
        LampTruth lamp,
        TakeOffTruth takeOff,
        NotebookTruth notebook,
        OrderTruth orders) {
    public static final Truth PLAIN = new Truth(
            FarmTruth.PLAIN,
            SeasonTruth.PLAIN,
            List.of(
                    PenTruth.of("Orchard", Species.PHEASANT, 2, 18, 68, 91),
                    PenTruth.of("Ditch", Species.PHEASANT, 2, 16, 66, 88),
                    PenTruth.of("Barn", Species.PHEASANT, 1, 9, 70, 93),
                    PenTruth.of("Willow", Species.PHEASANT, 2, 20, 64, 82),
                    PenTruth.of("Lane", Species.PHEASANT, 1, 10, 67, 90),
                    PenTruth.of("Top", Species.PHEASANT, 2, 17, 65, 87),
                    PenTruth.of("Stone", Species.CHUKAR, 4, 12, 55, 85),
                    PenTruth.of("Gate", Species.CHUKAR, 3, 10, 52, 80)),
            List.of(),
            List.of(LossTruth.PLAIN, new LossTruth(Species.CHUKAR, 8, 2.5, 5, 1.5, 0.5, 0.8, 1, 1.2, 0.4)),
            TrendTruth.PLAIN,
            ScatterTruth.PLAIN,
            BurstTruth.PLAIN,
            EggRoomTruth.PLAIN,
            List.of(MachineTruth.PLAIN, new MachineTruth("Hatcher", MachineKind.HATCHER, 24)),
            List.of(
                    SectionTruth.PLAIN,
                    new SectionTruth("Setter", "2", 0, 0, 1),
                    new SectionTruth("Setter", "3", 0, 0, 1),
                    new SectionTruth("Setter", "4", 0, 0, 1)),
            TrayTruth.PLAIN,
            List.of(),
            LampTruth.PLAIN,
            TakeOffTruth.PLAIN,
            NotebookTruth.PLAIN,
            OrderTruth.PLAIN);

    public Truth {
        pens = List.copyOf(pens);
        events = List.copyOf(events);
        losses = List.copyOf(losses);
        machines = List.copyOf(machines);
        sections = List.copyOf(sections);
        powerCuts = List.copyOf(powerCuts);
        apart("pen", pens.stream().map(PenTruth::name).toList());
        apart("machine", machines.stream().map(MachineTruth::name).toList());
        apart("losses", losses.stream().map(l -> l.species().word()).toList());
        for (var event : events) {
            named("event", "pen", event.pen(), pens.stream().map(PenTruth::name).toList());
        }
        for (var section : sections) {
            named(
                    "section",
                    "machine",
                    section.machine(),
                    machines.stream().map(MachineTruth::name).toList());
        }
        if (machines.stream().noneMatch(m -> m.does() != MachineKind.HATCHER)) {
            throw new OutOfRange("There is no setter among the machines; name one");
        }
        if (machines.stream().noneMatch(m -> m.does() != MachineKind.SETTER)) {
            throw new OutOfRange("There is no hatcher among the machines; name one");
        }
    }

    /** A copy in which one part stands in the place of the part of its kind: lamp for lamp, trend for trend. */
    public Truth with(Record part) {
        for (var component : getClass().getRecordComponents()) {
            if (component.getType() == part.getClass()) {
                return Components.with(this, component.getName(), part);
            }
        }
        throw new IllegalArgumentException(part.getClass() + " is no part of a truth that stands alone");
    }

    public Truth withPens(List<PenTruth> others) {
        return Components.with(this, "pens", others);
    }

    public Truth withEvents(List<PenEventTruth> others) {
        return Components.with(this, "events", others);
    }

    public Truth withLosses(List<LossTruth> others) {
        return Components.with(this, "losses", others);
    }

    public Truth withSections(List<SectionTruth> others) {
        return Components.with(this, "sections", others);
    }

    public Truth withPowerCuts(List<PowerCutTruth> others) {
        return Components.with(this, "powerCuts", others);
    }

    /** The losses of a species: the truth's own, or the trade's first guess. */
    public LossTruth lossesOf(Species species) {
        return losses.stream()
                .filter(l -> l.species() == species)
                .findFirst()
                .orElseGet(() -> LossTruth.ofTrade(species));
    }

    public MachineTruth setter() {
        return machines.stream()
                .filter(m -> m.does() != MachineKind.HATCHER)
                .findFirst()
                .orElseThrow();
    }

    public MachineTruth hatcher() {
        return machines.stream()
                .filter(m -> m.does() != MachineKind.SETTER)
                .findFirst()
                .orElseThrow();
    }

    /** The sections of a machine; one without effect where none is named. */
    public List<SectionTruth> sectionsOf(MachineTruth machine) {
        var own = sections.stream()
                .filter(s -> s.machine().equals(machine.name()))
                .toList();
        return own.isEmpty() ? List.of(new SectionTruth(machine.name(), "1", 0, 0, 1)) : own;
    }

    private static void apart(String what, List<String> names) {
        if (names.stream().distinct().count() < names.size()) {
            throw new OutOfRange("Two of " + what + " have the same name among " + String.join(", ", names));
        }
    }

    private static void named(String where, String what, String name, List<String> names) {
        if (!names.contains(name)) {
            throw new OutOfRange("An entry of " + where + " names the " + what + " \"" + name + "\"; there are "
                    + String.join(", ", names));
        }
    }
}
