package eggwright.today;

import static eggwright.today.Farmhouse.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksOrdered;
import eggwright.book.entry.OrderCancelled;
import eggwright.book.name.BuyerNumber;
import eggwright.book.name.OrderNumber;
import eggwright.today.task.Promise;
import eggwright.today.task.Target;
import eggwright.today.task.TaskKind;
import eggwright.today.task.Urgency;
import eggwright.today.task.Work;
import eggwright.trade.Species;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class OrdersTest {
    private static final OrderNumber ORDER = new OrderNumber("31");
    private static final BuyerNumber BUYER = new BuyerNumber("7");
    private static final LocalDate DAY = LocalDate.of(2027, 4, 30);

    private static Farmhouse promised() {
        var farm = Farmhouse.usual();
        farm.note(on("2027-03-10T10:00"), new ChicksOrdered(ORDER, BUYER, Species.PHEASANT, 80, DAY, ""));
        return farm;
    }

    @Test
    void anOrder_isDeliveredOnItsDay_andOverdueWhileAnyIsOwed() {
        var farm = promised();
        assertEquals(Urgency.COMING, standing(farm.sheet(on("2027-04-29T09:00")), TaskKind.DELIVER));
        assertEquals(Urgency.NOW, standing(farm.sheet(on("2027-04-30T09:00")), TaskKind.DELIVER));
        farm.note(on("2027-04-30T10:00"), new ChicksDelivered(ORDER, BUYER, Species.PHEASANT, 60, 0));
        var late = farm.sheet(on("2027-05-01T09:00")).overdue().getFirst();
        assertEquals(new Work.OfOrders(List.of(new Promise(ORDER, BUYER, Species.PHEASANT, 20, DAY))), late.work());
        assertEquals(Target.Form.of("chicks-delivered", ORDER), late.target());
        farm.note(on("2027-05-01T10:00"), new ChicksDelivered(ORDER, BUYER, Species.PHEASANT, 20, 0));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-05-01T11:00")), TaskKind.DELIVER));
    }

    @Test
    void boxes_areReadyTheDayBefore() {
        var task = promised()
                .sheet(on("2027-04-29T09:00"))
                .all(TaskKind.BOXES_READY)
                .getFirst();
        assertEquals(Urgency.LATER_TODAY, task.urgency());
        assertEquals(80, ((Work.OfOrders) task.work()).chicks());
    }

    @Test
    void anOrderCalledOff_isNoWork() {
        var farm = promised();
        farm.note(on("2027-04-20T10:00"), new OrderCancelled(ORDER, "changed their mind"));
        assertEquals(Urgency.OVER, standing(farm.sheet(on("2027-05-01T11:00")), TaskKind.DELIVER));
    }
}
