package eggwright.today.rule;

import eggwright.book.picture.OrderPicture;
import eggwright.today.task.Practice;
import eggwright.today.task.Promise;
import eggwright.today.task.Reason;
import eggwright.today.task.Span;
import eggwright.today.task.Target;
import eggwright.today.task.Task;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Where;
import eggwright.today.task.Work;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Deliveries on their day until nothing is owed, and boxes ready the day before. */
public final class OrderRules {
    private OrderRules() {}

    public static List<Task> tasks(Standing standing) {
        var tasks = new ArrayList<Task>();
        SortedMap<LocalDate, List<Promise>> days = new TreeMap<>();
        for (var order : standing.picture().orders().values()) {
            for (var promise : owed(order)) {
                tasks.add(delivery(standing, promise));
                days.computeIfAbsent(promise.day(), d -> new ArrayList<>()).add(promise);
            }
        }
        days.forEach((day, promises) -> tasks.add(boxes(standing, day, promises)));
        return tasks;
    }

    private static List<Promise> owed(OrderPicture order) {
        var ordered = order.ordered();
        return ordered == null || order.owed() == 0
                ? List.of()
                : List.of(new Promise(order.order(), ordered.buyer(), ordered.species(), order.owed(), ordered.day()));
    }

    private static Task delivery(Standing standing, Promise promise) {
        return standing.task(
                TaskKind.DELIVER,
                Span.at(promise.day().atStartOfDay(standing.zone())),
                Where.NOT_SAID,
                new Work.OfOrders(List.of(promise)),
                List.of(new Reason.Promised(promise.day())),
                Target.Form.of("chicks-delivered", promise.order()));
    }

    private static Task boxes(Standing standing, LocalDate day, List<Promise> promises) {
        return standing.task(
                TaskKind.BOXES_READY,
                Span.at(standing.atWork(day.minusDays(1))),
                Where.NOT_SAID,
                new Work.OfOrders(promises),
                List.of(Reason.Custom.of(Practice.BOXES_READY_A_DAY_BEFORE), new Reason.Promised(day)),
                new Target.Orders());
    }
}
