package eggwright.invented.season;

import eggwright.book.entry.ChicksDelivered;
import eggwright.book.entry.ChicksDied;
import eggwright.book.entry.ChicksOrdered;
import eggwright.book.entry.ChicksPlaced;
import eggwright.book.entry.ChicksSold;
import eggwright.book.name.BuyerNumber;
import eggwright.book.name.OrderNumber;
import eggwright.invented.chance.Draw;
import eggwright.trade.Species;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Chicks after take-off: the brooder, promises, deliveries. */
final class Chicks {
    private static final double DIES_IN_BROODER = 0.012;
    private static final int BROODERS = 4;
    private static final int FEWEST_TO_DRIVE_FOR = 20;
    private static final double OTHER_SPECIES = 0.18;

    private final Farm farm;
    private final List<Batch> batches;
    private final List<Promise> promises = new ArrayList<>();
    private final Map<Species, Integer> stock = new EnumMap<>(Species.class);

    Chicks(Farm farm, List<Batch> batches) {
        this.farm = farm;
        this.batches = batches;
    }

    private record Asked(ZonedDateTime at, BuyerNumber buyer, Species species, int chicks, LocalDate day) {}

    private static final class Promise {
        final OrderNumber order;
        final Asked asked;
        int owed;

        Promise(OrderNumber order, Asked asked) {
            this.order = order;
            this.asked = asked;
            this.owed = asked.chicks();
        }
    }

    private record Arrival(Batch batch, Batch.Hatched chicks) {}

    void note() {
        var arrivals = batches.stream()
                .flatMap(b -> b.hatched.stream().map(h -> new Arrival(b, h)))
                .filter(a -> a.chicks().saleable() > 0)
                .sorted(Comparator.comparing(a -> a.chicks().at().toInstant()))
                .toList();
        if (arrivals.isEmpty()) {
            return;
        }
        var first = arrivals.getFirst().chicks().at().toLocalDate();
        var last = arrivals.getLast().chicks().at().toLocalDate().plusDays(9);
        promise(first, last);
        int next = 0;
        for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
            while (next < arrivals.size()
                    && !arrivals.get(next).chicks().at().toLocalDate().isAfter(day)) {
                place(arrivals.get(next++));
            }
            deliver(day);
            if (day.getDayOfWeek() == DayOfWeek.SATURDAY) {
                sell(day);
            }
        }
    }

    private void place(Arrival arrival) {
        var chicks = arrival.chicks();
        var brooder = "Brooder " + (arrival.batch().number % BROODERS + 1);
        var placedAt = chicks.at().plusMinutes(25);
        farm.notebook.note(
                placedAt, new ChicksPlaced(arrival.batch().name, chicks.species(), chicks.saleable(), brooder));
        var random = farm.streams.of("brooder", arrival.batch().name, chicks.species(), chicks.at());
        int died = Draw.binomial(random, chicks.saleable(), DIES_IN_BROODER);
        if (died > 0) {
            farm.notebook.note(
                    placedAt.plusDays(Draw.between(random, 1, 3)).plusMinutes(200),
                    new ChicksDied(arrival.batch().name, chicks.species(), died, brooder, "Weak"));
        }
        stock.merge(chicks.species(), chicks.saleable() - died, Integer::sum);
    }

    private void promise(LocalDate first, LocalDate last) {
        var random = farm.streams.of("orders");
        var orders = farm.truth.orders();
        var kinds = farm.truth.pens().stream().map(p -> p.species()).distinct().toList();
        var asked = new ArrayList<Asked>();
        for (var week = first; week.isBefore(last); week = week.plusWeeks(1)) {
            int count = Draw.poisson(random, orders.perWeek());
            for (int i = 0; i < count; i++) {
                boolean other = kinds.size() > 1 && Draw.chance(random, OTHER_SPECIES);
                int chicks = Draw.between(random, orders.fewest(), orders.most());
                var day = week.plusDays(random.nextInt(7)).with(TemporalAdjusters.nextOrSame(DayOfWeek.FRIDAY));
                asked.add(new Asked(
                        farm.at(day.minusDays(Draw.between(random, 18, 45)), LocalTime.of(20, 15))
                                .plusMinutes(2L * i),
                        buyer(Draw.between(random, 1, orders.buyers())),
                        other ? kinds.get(1) : kinds.getFirst(),
                        tens(other ? Math.max(orders.fewest(), chicks / 3) : chicks),
                        day));
            }
        }
        asked.sort(Comparator.comparing(a -> a.at().toInstant()));
        for (var one : asked) {
            var order = new OrderNumber(farm.year() + "-" + (promises.size() + 1));
            promises.add(new Promise(order, one));
            farm.notebook.note(
                    one.at(), new ChicksOrdered(order, one.buyer(), one.species(), one.chicks(), one.day(), ""));
        }
    }

    private static int tens(int chicks) {
        return Math.max(1, chicks > 10 ? chicks - chicks % 10 : chicks);
    }

    /** The same buyer has the same number every season. */
    private static BuyerNumber buyer(int which) {
        return new BuyerNumber("B" + (1000 + 37 * which));
    }

    /** On the day, and the rest when there are chicks again. */
    private void deliver(LocalDate day) {
        int minute = 0;
        for (var promise : promises) {
            var asked = promise.asked;
            int chicks = Math.min(stock.getOrDefault(asked.species(), 0), promise.owed);
            boolean worthTheWay = chicks == promise.owed || chicks >= FEWEST_TO_DRIVE_FOR;
            if (!asked.day().isAfter(day) && chicks > 0 && worthTheWay) {
                stock.merge(asked.species(), -chicks, Integer::sum);
                promise.owed -= chicks;
                farm.notebook.note(
                        farm.at(day, LocalTime.of(15, 0)).plusMinutes(minute),
                        new ChicksDelivered(promise.order, asked.buyer(), asked.species(), chicks, 0));
                minute += 25;
            }
        }
    }

    private void sell(LocalDate day) {
        int minute = 0;
        for (var species : Species.values()) {
            int chicks = stock.getOrDefault(species, 0) * 2 / 5;
            if (chicks >= 10) {
                stock.merge(species, -chicks, Integer::sum);
                farm.notebook.note(
                        farm.at(day, LocalTime.of(11, 0)).plusMinutes(minute),
                        new ChicksSold(null, species, chicks, null));
                minute += 10;
            }
        }
    }
}
