package eggwright.today.lamp;

import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Picture;
import eggwright.book.picture.SetPicture;
import eggwright.today.schedule.FarmProfiles;
import eggwright.today.schedule.FarmZone;
import eggwright.today.schedule.LookDay;
import eggwright.today.schedule.LooksTaken;
import eggwright.today.schedule.Schedule;
import eggwright.today.schedule.SpeciesSchedule;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All trays in the setters, as a phone takes them into the dark room. It says on which days each is due, so that a phone
 * that hears nothing for days still knows.
 */
public record LampRound(ZonedDateTime now, List<LampTray> trays) {
    public LampRound {
        trays = List.copyOf(trays);
    }

    /**
     * @param now in any zone: the farm's own is taken where it noted one
     */
    public static LampRound of(Picture picture, ZonedDateTime now) {
        var zone = FarmZone.of(picture.farm(), now.getZone());
        var here = now.withZoneSameInstant(zone);
        var profiles = FarmProfiles.of(picture.farm());
        var trays = new ArrayList<LampTray>();
        for (var set : picture.sets().values()) {
            for (var load : set.loads().values()) {
                if (load.phase() == LoadPhase.IN_SETTER) {
                    var dates = Schedule.of(load, set, profiles, picture.farm().habits(), zone);
                    if (!dates.isEmpty()) {
                        trays.add(tray(set, load, dates, here.toLocalDate()));
                    }
                }
            }
        }
        return new LampRound(here, trays);
    }

    private static LampTray tray(SetPicture set, LoadPicture load, List<SpeciesSchedule> dates, LocalDate today) {
        var looks = dates.stream()
                .flatMap(d -> d.looks().stream()
                        .filter(l -> !LooksTaken.whole(load, d, day -> day >= l.firstDay() && day <= l.lastDay())))
                .distinct()
                .sorted(Comparator.comparingInt(LookDay::day))
                .toList();
        var first = dates.stream()
                .min(Comparator.comparing(SpeciesSchedule::transfer))
                .orElseThrow();
        int day = first.dayOf(today);
        var judging = Judging.strictest(
                dates.stream().map(d -> Judging.of(d.profile())).toList());
        return new LampTray(
                load.ref(),
                first.species(),
                first.profile().periodDays().value(),
                first.set().toLocalDate(),
                day,
                load.eggsNow(),
                load.place().orElse(null),
                PensInTray.of(load, set.account()),
                looks,
                judging);
    }
}
