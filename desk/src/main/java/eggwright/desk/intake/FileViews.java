package eggwright.desk.intake;

import eggwright.climate.reading.ReadingPlace;
import eggwright.desk.Answer;
import eggwright.desk.Visit;
import eggwright.desk.form.Form;
import eggwright.desk.live.LiveBook;
import eggwright.desk.part.NoticeShown;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.intake.file.FarmPlaces;
import eggwright.intake.file.LoggerFiles;
import eggwright.intake.file.TakenFile;
import eggwright.sheet.logger.LoggerColumns;
import eggwright.sheet.logger.Looked;
import eggwright.sheet.problem.Problem;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A logger's file as a page shows it, before and after it was taken. */
final class FileViews {
    private final LiveBook book;
    private final LoggerFiles files;

    FileViews(LiveBook book, LoggerFiles files) {
        this.book = book;
        this.files = files;
    }

    private static Words words(Visit visit) {
        return Words.beside(FileViews.class, visit.language());
    }

    /** How a file would be read; with what was chosen, where the form was sent. */
    Answer looked(int status, Visit visit, Staged file, Looked looked, List<Form.ToMend> toMend) {
        return switch (looked) {
            case Looked.InDoubt doubt -> {
                var questions = new ArrayList<String>();
                doubt.questions().stream()
                        .map(q -> ProblemWords.say(q, words(visit)))
                        .forEach(questions::add);
                yield page(
                        status,
                        file,
                        Optional.of(NoticeShown.look(
                                words(visit).say(doubt.header().isEmpty() ? "file.unread" : "file.questions"))),
                        questions,
                        List.of(),
                        doubt.header(),
                        doubt.some(),
                        doubt.header().isEmpty()
                                ? Optional.empty()
                                : Optional.of(form(visit, file, doubt.header(), doubt.columns(), open(doubt))
                                        .toMend(toMend)));
            }
            case Looked.Seen seen ->
                page(
                        status,
                        file,
                        Optional.empty(),
                        List.of(),
                        seen.notes(),
                        seen.header(),
                        seen.some(),
                        Optional.of(form(visit, file, seen.header(), seen.columns(), Set.of())
                                .toMend(toMend)));
        };
    }

    /** A file that could be looked at, but holds what cannot be taken. */
    Answer refused(Visit visit, Staged file, Looked.Seen seen, TakenFile.Refused refused) {
        var words = words(visit);
        var problems = new ArrayList<String>();
        refused.problems().stream().map(p -> ProblemWords.say(p, words)).forEach(problems::add);
        if (refused.beyond() > 0) {
            problems.add(words.say("problems.more", refused.beyond()));
        }
        return page(
                422,
                file,
                Optional.of(NoticeShown.refused(words.say("file.refused"))),
                problems,
                List.of(),
                seen.header(),
                seen.some(),
                Optional.of(form(visit, file, seen.header(), seen.columns(), Set.of())));
    }

    /** Columns that a question is about. */
    private static Set<String> open(Looked.InDoubt doubt) {
        return doubt.questions().stream()
                .map(Problem::column)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
    }

    private Form form(Visit visit, Staged file, List<String> header, LoggerColumns columns, Set<String> open) {
        return new FileForm(FarmPlaces.of(book.picture()), files.zone(file.file()), words(visit))
                .of(FilePages.HERE + "/" + file.id(), file.place(), header, columns, open)
                .filledFrom(visit.typed());
    }

    private static Answer page(
            int status,
            Staged file,
            Optional<NoticeShown> state,
            List<String> questions,
            List<String> notes,
            List<String> header,
            List<List<String>> some,
            Optional<Form> form) {
        return new Answer.Page(
                status,
                "intake/file.jte",
                new FilePage(file.file().name(), state, questions, notes, table(header, some), form));
    }

    private static Optional<TableShown> table(List<String> header, List<List<String>> some) {
        return header.isEmpty() || some.isEmpty()
                ? Optional.empty()
                : Optional.of(new TableShown(
                        header,
                        some.stream().map(row -> cells(row, header.size())).toList()));
    }

    private static List<Cell> cells(List<String> row, int width) {
        var cells = new ArrayList<Cell>();
        for (int i = 0; i < width; i++) {
            cells.add(Cell.of(i < row.size() ? row.get(i) : ""));
        }
        return cells;
    }

    Answer taken(Visit visit, Staged file, TakenFile.Kept kept) {
        var words = words(visit);
        var days = Days.in(visit.language());
        var said = new ArrayList<String>();
        said.add(words.say("taken.rows", kept.rows(), kept.fresh(), kept.known()));
        said.add(words.say(
                "taken.span",
                days.recordStamp(kept.first().atZone(book.zone())),
                days.recordStamp(kept.last().atZone(book.zone()))));
        said.add(words.say("taken.empty", kept.empty()));
        switch (kept.odd()) {
            case TakenFile.Odd.Counted odd -> {
                said.add(words.say("taken.gaps", odd.gaps()));
                said.add(words.say("taken.held", odd.heldBack()));
            }
            case TakenFile.Odd.NotCounted() -> said.add(words.say("taken.notCounted"));
        }
        said.add(words.say("taken.remembered"));
        var links = kept.channels().stream()
                .map(channel -> channel.place())
                .distinct()
                .filter(ReadingPlace.InMachine.class::isInstance)
                .map(ReadingPlace.InMachine.class::cast)
                .map(in -> new FileTakenPage.Link(
                        "/machines/"
                                + URLEncoder.encode(in.machine().text(), StandardCharsets.UTF_8)
                                        .replace("+", "%20"),
                        words.say("taken.look", in.machine().text())))
                .toList();
        return Answer.page(
                "intake/taken.jte", new FileTakenPage(file.file().name(), said, held(kept, words, days), links));
    }

    private Optional<TableShown> held(TakenFile.Kept kept, Words words, Days days) {
        var reading = new ReadingWords(words);
        var first = kept.odd() instanceof TakenFile.Odd.Counted odd ? odd.firstHeld() : List.<TakenFile.HeldBack>of();
        var rows = first.stream()
                .map(one -> List.of(
                        Cell.of(days.recordStamp(one.what().at().atZone(book.zone()))),
                        Cell.of(reading.value(one.what().value(), one.channel().unit())),
                        Cell.of(reading.place(one.channel().place())),
                        Cell.of(words.say("doubt." + one.what().why().name().toLowerCase(Locale.ROOT)))))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new TableShown(
                        List.of(
                                words.say("head.at"),
                                words.say("head.reading"),
                                words.say("head.place"),
                                words.say("head.why")),
                        rows));
    }
}
