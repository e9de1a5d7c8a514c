package eggwright.desk.machine;

import eggwright.book.entry.MachineUse;
import eggwright.book.name.MachineName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.MachinePicture;
import eggwright.book.picture.Picture;
import eggwright.climate.reading.ReadingStore;
import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.units.OutOfRange;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The machines: all of them, each by itself, and the table for the wall. */
public final class MachinePages implements Pages {
    private static final int READINGS_SHOWN = 6;

    private final LiveBook book;
    private final Rooms rooms;

    public MachinePages(LiveBook book, ReadingStore readings) {
        this.book = book;
        this.rooms = new Rooms(readings);
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(MachinePaths.ALL, May.READ, this::all);
        new RoomPages(book, rooms).addTo(routes);
        // Before the machines by name, of which none is found that is called like it.
        new WetBulbTables(book, rooms).addTo(routes);
        new SensorPages(book, rooms).addTo(routes);
        routes.read(MachinePaths.ALL + "/{machine}", May.READ, this::one);
    }

    private Answer one(Visit visit) {
        var words = Words.beside(MachinePages.class, visit.language());
        var notThere = Answer.notThere(words.say("named", visit.at("machine")));
        MachineName machine;
        try {
            machine = new MachineName(visit.at("machine"));
        } catch (OutOfRange notAName) {
            return notThere;
        }
        return rooms.knows(book.picture(), machine)
                ? Answer.page("machine/one.jte", new OneMachine(book, rooms, visit).page(machine))
                : notThere;
    }

    private Answer all(Visit visit) {
        var words = Words.beside(MachinePages.class, visit.language());
        var picture = book.picture();
        var today = book.time().toLocalDate();
        var machines = picture.machines().values().stream()
                .map(m -> machine(m, picture, today, words))
                .toList();
        var unplaced = in(picture).stream()
                .filter(l -> l.place().isEmpty() || l.place().get().machine() == null)
                .map(l -> load(l, today, words))
                .toList();
        return new Answer.Page(200, "machine/all.jte", new MachinesPage(machines, unplaced));
    }

    private static List<LoadPicture> in(Picture picture) {
        return picture.sets().values().stream()
                .flatMap(s -> s.loads().values().stream())
                .filter(l -> l.phase() != LoadPhase.OUT)
                .toList();
    }

    private static @Nullable MachineName at(LoadPicture load) {
        return load.place().map(p -> p.machine()).orElse(null);
    }

    private static MachinesPage.Machine machine(MachinePicture machine, Picture picture, LocalDate today, Words words) {
        var loads = in(picture).stream()
                .filter(l -> machine.machine().equals(at(l)))
                .toList();
        var bySection = new LinkedHashMap<String, List<MachinesPage.Load>>();
        machine.sections().forEach(s -> bySection.put(s.text(), new ArrayList<>()));
        for (var load : loads) {
            var section = load.place().map(p -> p.section()).map(s -> s.text()).orElse("");
            bySection.computeIfAbsent(section, s -> new ArrayList<>()).add(load(load, today, words));
        }
        var name = MachinePaths.encoded(machine.machine().text());
        return new MachinesPage.Machine(
                machine.machine().text(),
                MachinePaths.of(machine.machine()),
                Optional.ofNullable(machine.does())
                        .map(d -> words.say("does." + d.name().toLowerCase(Locale.ROOT)))
                        .filter(kind -> !kind.equalsIgnoreCase(machine.machine().text()))
                        .orElse(""),
                state(machine, loads, words),
                bySection.entrySet().stream()
                        .map(s -> new MachinesPage.Section(s.getKey(), s.getValue()))
                        .toList(),
                machine.climate().reversed().stream()
                        .limit(READINGS_SHOWN)
                        .map(read -> reading(read, words))
                        .toList(),
                "/notes/climate-noted?machine=" + name,
                "/notes/machine-cleaned?machine=" + name);
    }

    private static List<String> state(MachinePicture machine, List<LoadPicture> loads, Words words) {
        var state = new ArrayList<String>();
        if (machine.use() == MachineUse.OUT_OF_USE) {
            state.add(words.say("outOfUse"));
        }
        int eggs = loads.stream()
                .mapToInt(l -> l.eggsNow() == null ? 0 : l.eggsNow())
                .sum();
        if (loads.isEmpty()) {
            state.add(words.say("isEmpty"));
        } else if (machine.trayPlaces() != null) {
            state.add(words.say("holdsOf", loads.size(), machine.trayPlaces(), eggs));
        } else {
            state.add(words.say("holds", loads.size(), eggs));
        }
        var cleaned = machine.cleanedAt();
        state.add(
                cleaned == null
                        ? words.say("neverCleaned")
                        : words.say("cleaned", Days.in(words.language()).stamp(cleaned)));
        return state;
    }

    private static MachinesPage.Load load(LoadPicture load, LocalDate today, Words words) {
        var eggs = load.eggsNow();
        return new MachinesPage.Load(
                "/sets/" + MachinePaths.encoded(load.ref().set().text()),
                load.ref().set().text(),
                load.ref().tray().text(),
                eggs == null ? words.say("countedTogether") : Integer.toString(eggs),
                Long.toString(ChronoUnit.DAYS.between(load.setOn(), today)));
    }

    private static MachinesPage.Reading reading(MachinePicture.Read read, Words words) {
        var what = read.what();
        var dry = what.dry();
        var wet = what.wet();
        var humidity = what.humidity();
        return new MachinesPage.Reading(
                Days.in(words.language()).stamp(read.at()),
                dry == null ? "" : dry.toString(),
                wet == null ? "" : wet.toString(),
                humidity == null ? "" : Math.round(humidity.pct()) + "\u00a0%",
                what.note());
    }
}
