package eggwright.desk.lamp;

import eggwright.book.entry.Finding;
import eggwright.book.entry.PlaceSeen;
import eggwright.book.fold.Ledger;
import eggwright.book.name.DeviceName;
import eggwright.book.name.FarmId;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Picture;
import eggwright.desk.words.Words;
import eggwright.today.lamp.LampRound;
import eggwright.today.lamp.LampTray;
import eggwright.trade.TimeOutOfHeat;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;

/** Words and numbers of the round, as the lamp page needs them. */
final class RoundTelling {
    private RoundTelling() {}

    static RoundTold of(
            Ledger ledger, ZonedDateTime now, FarmId farm, DeviceName device, Holding holding, Words words) {
        var picture = ledger.picture();
        var round = LampRound.of(picture, now);
        return new RoundTold(
                farm.text(),
                device.text(),
                now.toInstant(),
                limit(picture, words),
                round.trays().stream().map(t -> tray(t, ledger, words)).toList(),
                holding.others(device, now.toInstant()));
    }

    private static RoundTold.Limit limit(Picture picture, Words words) {
        var own = picture.farm().habits().minutesOut();
        return own == null
                ? new RoundTold.Limit(
                        TimeOutOfHeat.LIMIT_MINUTES.value(),
                        TimeOutOfHeat.LIMIT_MINUTES.source().words())
                : new RoundTold.Limit(own, words.say("limit.own"));
    }

    private static RoundTold.Tray tray(LampTray tray, Ledger ledger, Words words) {
        var picture = ledger.picture();
        var load = picture.set(tray.load().set())
                .flatMap(s -> s.load(tray.load().tray()))
                .orElseThrow();
        var second = SecondWanted.of(load, ledger);
        var place = tray.place();
        var machine = place == null ? null : place.machine();
        var section = place == null ? null : place.section();
        return new RoundTold.Tray(
                tray.load().set().text(),
                tray.load().tray().text(),
                tray.species().name().toLowerCase(Locale.ROOT),
                words.species(tray.species()),
                tray.periodDays(),
                machine == null ? null : machine.text(),
                section == null ? null : section.text(),
                place == null ? null : place.position(),
                tray.dayZero(),
                tray.day(),
                tray.eggs(),
                tray.pens().stream()
                        .map(p -> new RoundTold.Pen(p.pen().text(), p.eggs(), p.mark(), p.places()))
                        .toList(),
                tray.looks().stream()
                        .map(l -> new RoundTold.Look(l.firstDay(), l.day(), l.lastDay()))
                        .toList(),
                new RoundTold.Judged(
                        tray.judging().from(),
                        tray.judging().darkFrom(),
                        tray.judging().until()),
                second.isPresent() ? List.of() : doubtful(load),
                picture.farm().habits().trayRows(),
                second.map(RoundTelling::told).orElse(null));
    }

    private static RoundTold.Second told(SecondWanted wanted) {
        return new RoundTold.Second(
                wanted.of() == null ? null : wanted.of().text(),
                wanted.first().stream()
                        .map(f -> new RoundTold.First(f.who().text(), f.device().text()))
                        .toList());
    }

    /** Where the last look that marked places had doubtful eggs. A blind look is not told. */
    private static List<Integer> doubtful(LoadPicture load) {
        return load.looks().reversed().stream()
                .filter(l -> !l.look().places().isEmpty())
                .findFirst()
                .map(l -> l.look().places().stream()
                        .filter(p -> p.finding() == Finding.DOUBTFUL)
                        .map(PlaceSeen::place)
                        .sorted()
                        .toList())
                .orElse(List.of());
    }
}
