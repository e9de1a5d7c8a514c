package eggwright.cli.farm;

import eggwright.cli.answer.Answer;
import eggwright.cli.answer.Value;
import eggwright.today.DaySheet;
import eggwright.today.eggroom.EggLot;
import eggwright.today.eggroom.EggRoomSheet;
import eggwright.today.task.NotLooked;
import eggwright.today.task.Task;
import eggwright.today.task.TrayCount;
import eggwright.today.task.Where;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.Function;

/** The day sheet for other programs, task by task. */
final class TodayAnswer {
    private TodayAnswer() {}

    static Answer of(DaySheet sheet, EggRoomSheet room) {
        return Answer.of()
                // First, since what is kept beside the book is kept without it.
                .with("now", hour(sheet.now()))
                .with("overdue", many(sheet.overdue(), TodayAnswer::task))
                .with("due", many(sheet.due(), TodayAnswer::task))
                .with("coming", many(sheet.coming(), TodayAnswer::task))
                .with("not_looked", many(sheet.notLooked(), TodayAnswer::notLooked))
                .with(
                        "left_open",
                        many(
                                sheet.leftOpen(),
                                o -> Answer.of()
                                        .with("set", o.set().text())
                                        .with("take_off_on", o.takeOff().toString())))
                .with("egg_room_set_first", many(room.setFirst(), TodayAnswer::lot));
    }

    static String hour(ZonedDateTime now) {
        return now.toOffsetDateTime().toString();
    }

    private static <T> Value many(List<T> each, Function<T, Answer> answer) {
        return new Value.Many(
                each.stream().<Value>map(e -> new Value.Group(answer.apply(e))).toList());
    }

    private static Answer task(Task task) {
        var answer = where(
                Answer.of()
                        .with("kind", task.kind().word())
                        .with("urgency", task.urgency().word())
                        .with("from", task.when().from().toOffsetDateTime().toString())
                        .with("to", task.when().to().toOffsetDateTime().toString()),
                task.where());
        if (task.set().isPresent()) {
            answer = answer.with("set", task.set().get().text());
        }
        return task.trays().isEmpty() ? answer : answer.with("trays", many(task.trays(), TodayAnswer::tray));
    }

    private static Answer notLooked(NotLooked missed) {
        return where(Answer.of().with("set", missed.set().text()).with("day", (long) missed.day()), missed.where())
                .with("trays", many(missed.trays(), TodayAnswer::tray));
    }

    private static Answer where(Answer answer, Where where) {
        var machine = where.machine();
        var section = where.section();
        var placed = machine == null ? answer : answer.with("machine", machine.text());
        return section == null ? placed : placed.with("section", section.text());
    }

    private static Answer tray(TrayCount tray) {
        var eggs = tray.eggs();
        var answer = Answer.of().with("tray", tray.tray().text());
        return eggs == null ? answer : answer.with("eggs", (long) eggs);
    }

    private static Answer lot(EggLot lot) {
        var answer = Answer.of()
                .with("species", lot.key().species().word())
                .with("eggs", (long) lot.eggs())
                .with("storage", lot.storage().word())
                .with("sires", lot.sires().word());
        var pen = lot.key().pen();
        var youngest = lot.youngestDays();
        var oldest = lot.oldestDays();
        answer = pen == null ? answer : answer.with("pen", pen.text());
        answer = youngest == null ? answer : answer.with("youngest_days", (long) youngest);
        return oldest == null ? answer : answer.with("oldest_days", (long) oldest);
    }
}
