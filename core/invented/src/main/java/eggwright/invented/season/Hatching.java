package eggwright.invented.season;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.MachineCleaned;
import eggwright.book.entry.Pull;
import eggwright.book.entry.Scope;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.TransferOf;
import eggwright.book.entry.Transferred;
import eggwright.book.name.BasketName;
import eggwright.book.name.MachineName;
import eggwright.invented.answer.TrueFate;
import eggwright.invented.chance.Draw;
import eggwright.invented.truth.LampTruth;
import eggwright.invented.truth.TakeOffTruth.CountedBy;
import eggwright.trade.Species;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/** The hatcher: transfer, pulls, and what is opened afterwards. */
final class Hatching {
    /** Baskets of two colours in turn, so that a basket is not in use for two sets at once. */
    private static final List<String> COLOURS = List.of("red", "blue");

    private static final LocalTime LAST_PULL = LocalTime.of(10, 0);

    private final Farm farm;
    private final MachineName hatcher;

    Hatching(Farm farm) {
        this.farm = farm;
        this.hatcher = new MachineName(farm.truth.hatcher().name());
    }

    void work(Batch batch) {
        int basket = 0;
        for (var species : batch.species()) {
            var loads =
                    batch.of(species).stream().filter(l -> !l.inside.isEmpty()).toList();
            var dates = farm.bird(species).dates(batch.startedAt);
            basket = transfer(batch, species, loads, dates.transfer(), basket);
            takeOff(
                    batch,
                    species,
                    groups(batch, loads),
                    farm.at(dates.takeOff().toLocalDate(), LAST_PULL)
                            .plusMinutes(3L * batch.species().indexOf(species))
                            .plusHours(farm.truth.takeOff().lastPullHoursLater()));
        }
    }

    private int transfer(Batch batch, Species species, List<Load> loads, ZonedDateTime due, int from) {
        var at = farm.at(due.toLocalDate(), farm.truth.season().workHour())
                .plusMinutes(farm.truth.lamp().atTransfer() == LampTruth.AtTransfer.LOOKED_AT ? 150 : 10)
                .plusMinutes(3L * batch.species().indexOf(species));
        if (from == 0) {
            farm.notebook.note(
                    farm.at(due.toLocalDate().minusDays(1), LocalTime.of(10, 30))
                            .plusMinutes(batch.day(due.toLocalDate())),
                    new MachineCleaned(hatcher, null, "Washed, dry and at heat"));
        }
        int together = farm.truth.takeOff().countedBy() == CountedBy.BASKET ? 2 : 1;
        var colour = COLOURS.get(batch.number % COLOURS.size());
        var parts = new ArrayList<TransferOf>();
        for (int i = 0; i < loads.size(); i++) {
            var load = loads.get(i);
            var basket = new BasketName(colour + " " + (from + i / together + 1));
            load.basket = basket;
            parts.add(new TransferOf(load.set, load.tray, load.inside.size(), basket));
        }
        if (!parts.isEmpty()) {
            farm.notebook.note(at, new Transferred(hatcher, parts));
        }
        return from + (loads.size() + together - 1) / together;
    }

    /** Eggs whose chicks are counted together. */
    private record Group(Scope scope, List<Egg> eggs) {}

    private List<Group> groups(Batch batch, List<Load> loads) {
        return switch (farm.truth.takeOff().countedBy()) {
            case LOAD ->
                loads.stream()
                        .map(l -> new Group(Scope.ofLoad(l.set, l.tray), l.inside))
                        .toList();
            case BASKET ->
                loads.stream()
                        .map(l -> l.basket)
                        .distinct()
                        .filter(b -> b != null)
                        .map(b -> new Group(
                                Scope.ofBasket(b),
                                loads.stream()
                                        .filter(l -> b.equals(l.basket))
                                        .flatMap(l -> l.inside.stream())
                                        .toList()))
                        .toList();
            case SET ->
                loads.isEmpty()
                        ? List.of()
                        : List.of(new Group(
                                Scope.ofSet(batch.name),
                                loads.stream().flatMap(l -> l.inside.stream()).toList()));
        };
    }

    private void takeOff(Batch batch, Species species, List<Group> groups, ZonedDateTime last) {
        var pulls = pulls(last);
        for (var group : groups) {
            for (var egg : group.eggs()) {
                if (egg.end.isChick() && hatchedAt(batch, egg).isAfter(last)) {
                    egg.ends(TrueFate.TOO_LATE, batch.day(last.toLocalDate()));
                }
            }
        }
        ZonedDateTime before = batch.startedAt;
        for (var pull : pulls) {
            int saleable = 0;
            var at = pull;
            for (var group : groups) {
                var count = count(batch, group, before, pull, pull.equals(last) ? Pull.LAST : Pull.MORE_TO_COME);
                saleable += count.saleable();
                if (count.pull() == Pull.LAST || count.saleable() + count.culled() > 0) {
                    farm.notebook.noteCount(at, count);
                    at = at.plusMinutes(4);
                }
            }
            batch.hatched.add(new Batch.Hatched(species, at, saleable));
            before = pull;
        }
        open(batch, species, groups, last.plusMinutes(4L * groups.size() + 60));
    }

    private List<ZonedDateTime> pulls(ZonedDateTime last) {
        return switch (farm.truth.takeOff().pulls()) {
            case 1 -> List.of(last);
            case 2 -> List.of(last.minusHours(16), last);
            default -> List.of(last.minusHours(24), last.minusHours(16), last);
        };
    }

    private static ZonedDateTime hatchedAt(Batch batch, Egg egg) {
        return batch.startedAt.plusMinutes(Math.round(egg.hatchDays * 24 * 60));
    }

    private static TakenOff count(Batch batch, Group group, ZonedDateTime after, ZonedDateTime upTo, Pull pull) {
        int saleable = 0;
        int culled = 0;
        int dead = 0;
        int late = 0;
        for (var egg : group.eggs()) {
            if (egg.end == TrueFate.TOO_LATE) {
                late++;
            } else if (egg.end.isChick()) {
                var at = hatchedAt(batch, egg);
                if (egg.end == TrueFate.DEAD_IN_BASKET) {
                    dead++;
                } else if (at.isAfter(after) && !at.isAfter(upTo)) {
                    if (egg.end == TrueFate.CULLED) {
                        culled++;
                    } else {
                        saleable++;
                    }
                }
            }
        }
        return pull == Pull.LAST
                ? new TakenOff(group.scope(), pull, saleable, culled, dead, late)
                : new TakenOff(group.scope(), pull, saleable, culled, 0, 0);
    }

    private void open(Batch batch, Species species, List<Group> groups, ZonedDateTime from) {
        var random = farm.streams.of("break-out", batch.name, species);
        var at = from;
        for (var group : groups) {
            var left = group.eggs().stream().filter(e -> !e.end.isChick()).toList();
            boolean opens = Draw.chance(random, farm.truth.takeOff().brokenOutPct() / 100);
            if (opens && !left.isEmpty()) {
                farm.notebook.note(
                        at, new BrokenOut(group.scope(), left.size(), 0, Opened.classes(left, farm.bird(species))));
                at = at.plusMinutes(7);
            }
        }
    }
}
