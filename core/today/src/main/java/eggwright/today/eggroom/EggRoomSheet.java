package eggwright.today.eggroom;

import eggwright.book.picture.Picture;
import eggwright.today.schedule.FarmProfiles;
import eggwright.today.schedule.FarmZone;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The egg room on one day: what waits, how old it is, and which to set first.
 *
 * @param pens those of which eggs wait, in the order of their names
 * @param setFirst the same eggs in the order of {@link EggLot#SET_FIRST}
 */
public record EggRoomSheet(LocalDate on, List<PenEggs> pens, List<EggLot> setFirst) {
    public EggRoomSheet {
        pens = List.copyOf(pens);
        setFirst = List.copyOf(setFirst);
    }

    /** As it stands now, with ages on the farm's own date. */
    public static EggRoomSheet of(Picture picture, ZonedDateTime now) {
        var zone = FarmZone.of(picture.farm(), now.getZone());
        return of(
                picture,
                FarmProfiles.of(picture.farm()),
                now.withZoneSameInstant(zone).toLocalDate());
    }

    /** The eggs that are there now, as old as they will be on a day. */
    public static EggRoomSheet of(Picture picture, FarmProfiles profiles, LocalDate on) {
        var pens = new ArrayList<PenEggs>();
        for (var shelf : picture.eggRoom().values()) {
            if (shelf.eggs() == 0) {
                continue;
            }
            var key = shelf.key();
            var pen = key.pen() == null ? null : picture.pens().get(key.pen());
            var profile = profiles.of(key.species());
            pens.add(new PenEggs(
                    key,
                    shelf.stored().stream()
                            .map(s -> EggLot.of(key, s, pen, profile, on))
                            .toList(),
                    profile.storageAdvisedDays(),
                    profile.storageLimitDays()));
        }
        var all = pens.stream()
                .flatMap(p -> p.lots().stream())
                .sorted(EggLot.SET_FIRST)
                .toList();
        return new EggRoomSheet(on, pens, all);
    }

    public int eggs() {
        return setFirst.stream().mapToInt(EggLot::eggs).sum();
    }
}
