package eggwright.desk.intake;

import eggwright.climate.reading.ReadingPlace;
import eggwright.desk.Answer;
import eggwright.desk.Brought;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.door.Door;
import eggwright.desk.form.Form;
import eggwright.desk.live.LiveBook;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.intake.Incoming;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.file.TakenFile;
import eggwright.sheet.logger.ColumnUse;
import eggwright.sheet.logger.LoggerImport;
import eggwright.sheet.logger.Looked;
import java.io.IOException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A logger's file brought by hand: chosen, looked at, its columns mended, taken whole or not at all. */
public final class FilePages implements Pages {
    static final String HERE = Door.FILES;
    private static final String WATCHED = "/readings/watched";

    private static final Logger LOG = LoggerFactory.getLogger(FilePages.class);

    private final LiveBook book;
    private final Incoming incoming;
    private final InstantSource clock;
    private final StagingRoom room;
    private final FileViews views;

    /** @param random hard to guess */
    public FilePages(LiveBook book, Incoming incoming, InstantSource clock, RandomGenerator random) {
        this.book = book;
        this.incoming = incoming;
        this.clock = clock;
        this.room = new StagingRoom(clock, random);
        this.views = new FileViews(book, incoming.files());
    }

    @Override
    public void addTo(Routes routes) {
        routes.read(HERE, May.NOTE, visit -> bringing(200, visit, ""));
        routes.bring(HERE, May.NOTE, this::bring);
        routes.write(WATCHED, May.NOTE, this::watched);
        routes.read(HERE + "/{file}", May.NOTE, visit -> one(visit, file -> show(visit, file)));
        routes.write(HERE + "/{file}", May.NOTE, visit -> one(visit, file -> say(visit, file)));
    }

    private static Words words(Visit visit) {
        return Words.beside(FilePages.class, visit.language());
    }

    private Answer bringing(int status, Visit visit, String message) {
        var asked =
                visit.typed().one(PlaceField.NAME).orElseGet(() -> visit.asked().text(PlaceField.NAME));
        return new Answer.Page(
                status,
                "intake/bring.jte",
                new BringPage(
                        message, PlaceField.orInTheFile(farm(), words(visit)).withValue(asked)));
    }

    private FarmPlaces farm() {
        return FarmPlaces.of(book.picture());
    }

    private Answer bring(Visit visit, Optional<Brought> brought) {
        if (Form.isToBeShownAgain(visit.typed())) {
            return bringing(200, visit, "");
        }
        if (brought.isEmpty()) {
            return bringing(422, visit, words(visit).say("bring.none"));
        }
        try {
            return room.put(brought.get(), visit.typed().text(PlaceField.NAME))
                    .map(FilePages::onward)
                    .orElseGet(() -> busy(visit));
        } catch (IOException noRoom) {
            LOG.warn("A file that was brought could not be put aside", noRoom);
            return bringing(503, visit, words(visit).say("bring.noRoom", String.valueOf(noRoom.getMessage())));
        }
    }

    /** None that is being worked on makes way for another. */
    private Answer busy(Visit visit) {
        return bringing(503, visit, words(visit).say("bring.busy", StagingRoom.MOST));
    }

    private static Answer onward(Staged file) {
        return Answer.onward(HERE + "/" + file.id());
    }

    /** A file of the watched folder, whose columns wait for a person. */
    private Answer watched(Visit visit) {
        var name = visit.typed().text("name");
        return incoming.folder()
                .map(java.util.function.Supplier::get)
                .filter(looked -> FolderWords.waits(looked, name))
                .map(looked -> {
                    var cut = name.indexOf('/');
                    return room.watched(looked.folder().resolve(name), cut < 0 ? "" : name.substring(0, cut))
                            .map(FilePages::onward)
                            .orElseGet(() -> busy(visit));
                })
                .orElseGet(() -> noSuch(visit));
    }

    private interface OfOne {
        Answer answer(Staged file);
    }

    private Answer one(Visit visit, OfOne route) {
        return room.using(visit.at("file"), route::answer).orElseGet(() -> noSuch(visit));
    }

    private static Answer noSuch(Visit visit) {
        return Answer.notThere(words(visit).say("noSuchFile"));
    }

    private Answer show(Visit visit, Staged file) {
        return file.kept()
                .map(kept -> views.taken(visit, file, kept))
                .orElseGet(() -> views.looked(
                        200,
                        visit,
                        file,
                        incoming.files().look(file.file(), Optional.empty(), Optional.empty()),
                        List.of()));
    }

    private Answer say(Visit visit, Staged file) {
        synchronized (file) {
            if (file.kept().isPresent()) {
                return onward(file);
            }
            var guard = Guard.of(file);
            var header = LoggerImport.header(file.file()).orElse(List.of());
            var looked = incoming.files()
                    .look(file.file(), FileForm.columns(visit.typed(), header), FileForm.dates(visit.typed()));
            if (visit.typed().text("act").equals(FilePage.LOOK) || Form.isToBeShownAgain(visit.typed())) {
                return views.looked(200, visit, file, looked, List.of());
            }
            return switch (looked) {
                case Looked.InDoubt doubt -> views.looked(422, visit, file, doubt, List.of());
                case Looked.Seen seen -> take(visit, file, seen, header, guard);
            };
        }
    }

    private Answer take(Visit visit, Staged file, Looked.Seen seen, List<String> header, Guard guard) {
        var words = words(visit);
        var toMend = new ArrayList<Form.ToMend>();
        var place = place(visit, seen, words, toMend);
        FileForm.open(visit.typed(), header)
                .forEach(name -> toMend.add(new Form.ToMend(name, words.say("file.choose"))));
        if (!toMend.isEmpty()) {
            return views.looked(422, visit, file, seen, toMend);
        }
        var into = new LoggerImport.Into(
                place,
                new FileForm(farm(), incoming.files().zone(file.file()), words).zone(visit.typed()),
                clock.instant());
        Optional<TakenFile> taken;
        try {
            taken = guard.take(incoming.files(), file.file(), seen, into, farm().zone());
        } catch (RuntimeException notSaved) {
            LOG.error("A logger's file was not kept", notSaved);
            return views.looked(503, visit, file, seen, List.of(new Form.ToMend("", words.say("file.notSaved"))));
        }
        if (taken.isEmpty()) {
            return views.looked(409, visit, file, seen, List.of(new Form.ToMend("", words.say("file.changed"))));
        }
        return switch (taken.get()) {
            case TakenFile.Refused refused -> views.refused(visit, file, seen, refused);
            case TakenFile.Kept kept -> {
                file.keep(kept);
                room.letGo(file);
                yield onward(file);
            }
        };
    }

    private Optional<ReadingPlace> place(Visit visit, Looked.Seen seen, Words words, List<Form.ToMend> toMend) {
        var chosen = visit.typed().text(PlaceField.NAME);
        var inFile = seen.columns().byName().values().stream().anyMatch(ColumnUse.Machine.class::isInstance);
        if (chosen.equals(PlaceField.IN_THE_FILE)) {
            if (!inFile) {
                toMend.add(new Form.ToMend(PlaceField.NAME, words.say("file.namesNone")));
            }
            return Optional.empty();
        }
        var place = farm().named(chosen);
        if (place.isEmpty()) {
            toMend.add(new Form.ToMend(PlaceField.NAME, words.say("add.noPlace")));
        }
        return place;
    }
}
