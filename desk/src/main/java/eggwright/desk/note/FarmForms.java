package eggwright.desk.note;

import eggwright.book.entry.HabitsNoted;
import eggwright.book.entry.IncidentKind;
import eggwright.book.entry.IncidentNoted;
import eggwright.book.entry.Remarked;
import eggwright.book.entry.SpeciesOverridden;
import eggwright.book.entry.WetBulbAir;
import eggwright.book.name.MachineName;
import eggwright.desk.form.Field.Need;
import eggwright.trade.ProfileField;
import eggwright.trade.caution.Place;
import eggwright.units.Altitude;
import eggwright.units.OutOfRange;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The farm as a whole: what went wrong, remarks, habits, own figures. */
final class FarmForms {
    static final List<EntryForm> ALL = List.of(remark(), incident(), habits(), override());

    private static final Pattern BETWEEN = Pattern.compile("[,;\\s]+");
    /** Typed to say that trays are never candled. */
    private static final String NEVER = "never";

    private FarmForms() {}

    private static EntryForm remark() {
        return EntryForm.of(
                "remark",
                Shelf.FARM,
                Remarked.class,
                asks -> List.of(
                        asks.known().names("set", asks.known().setNames(), Need.OPTIONAL),
                        asks.known().tray("tray", "set").optional(),
                        asks.remark("text").needed(),
                        asks.fold(
                                "part",
                                asks.known().pens(Need.OPTIONAL),
                                asks.text("basket").optional(),
                                asks.text("look").optional())),
                r -> {
                    if (r.isEmpty("text")) {
                        r.mend("text", "reader.needed");
                    }
                    return new Remarked(Scopes.readOrNone(r), r.text("text"));
                },
                it -> {
                    var written = new Written().text("text", it.text());
                    return it.about() == null ? written : Scopes.write(written, it.about());
                });
    }

    private static EntryForm incident() {
        return EntryForm.of(
                "incident",
                Shelf.FARM,
                IncidentNoted.class,
                asks -> List.of(
                        asks.choice("incident", IncidentKind.class, IncidentKind.POWER_CUT),
                        asks.known().anyMachine(Need.OPTIONAL),
                        asks.moment("until").optional(),
                        asks.measure("reached").optional(),
                        asks.remark("text")),
                r -> new IncidentNoted(
                        r.choice("incident", IncidentKind.class),
                        r.nameOrNone("machine", MachineName::new),
                        r.momentOrNone("until"),
                        Thermometers.read(r, "reached"),
                        r.text("text")),
                it -> new Written()
                        .choice("incident", it.what())
                        .name("machine", it.machine())
                        .moment("until", it.until())
                        .typed("reached", it.reached())
                        .text("text", it.text()),
                Place.REPORTABLE_SIGNS,
                Place.FUEL_INDOORS,
                Place.CURRENT_AND_WATER);
    }

    private static EntryForm habits() {
        return EntryForm.of(
                "farm-habits",
                Shelf.FARM,
                HabitsNoted.class,
                asks -> List.of(
                        asks.text("farm_name").optional(),
                        asks.text("time_zone").optional(),
                        asks.weekdays("set_weekday"),
                        asks.text("set_hour").optional(),
                        asks.text("candling_days").optional(),
                        asks.text("rounds").optional(),
                        asks.text("work_hour").optional(),
                        asks.text("tray_rows").optional(),
                        asks.whole("minutes_limit", "minutes").optional(),
                        asks.text("altitude").optional(),
                        asks.listOrNone("wet_bulb_air", WetBulbAir.class)),
                r -> new HabitsNoted(
                        absent(r, "farm_name"),
                        absent(r, "time_zone"),
                        r.isEmpty("set_weekday") ? null : r.choice("set_weekday", DayOfWeek.class),
                        r.hourOrNone("set_hour"),
                        numbers(r, "candling_days"),
                        r.isEmpty("rounds") ? null : hours(r),
                        r.hourOrNone("work_hour"),
                        numbers(r, "tray_rows"),
                        r.wholeOrNone("minutes_limit"),
                        r.measureOrNone("altitude", Altitude::parse),
                        r.isEmpty("wet_bulb_air") ? null : r.choice("wet_bulb_air", WetBulbAir.class)),
                it -> {
                    var weekday = it.setWeekday();
                    var days = it.candlingDays();
                    var rounds = it.rounds();
                    var rows = it.trayRows();
                    var written = new Written()
                            .text("farm_name", it.farmName())
                            .text("time_zone", it.timeZone())
                            .hour("set_hour", it.setHour())
                            .text("candling_days", days == null ? "" : days.isEmpty() ? NEVER : joined(days))
                            .text("rounds", rounds == null ? "" : joined(rounds))
                            .hour("work_hour", it.workHour())
                            .text("tray_rows", rows == null ? "" : rows.isEmpty() ? NEVER : joined(rows))
                            .whole("minutes_limit", it.minutesOut())
                            .typed("altitude", it.altitude());
                    var air = it.wetBulbAir();
                    written = air == null ? written.text("wet_bulb_air", "") : written.choice("wet_bulb_air", air);
                    return weekday == null ? written.text("set_weekday", "") : written.choice("set_weekday", weekday);
                });
    }

    private static String joined(List<?> parts) {
        return String.join(" ", parts.stream().map(Object::toString).toList());
    }

    private static @Nullable String absent(FormReader r, String name) {
        return r.isEmpty(name) ? null : r.text(name);
    }

    private static @Nullable List<Integer> numbers(FormReader r, String name) {
        if (r.isEmpty(name)) {
            return null;
        }
        var days = new ArrayList<Integer>();
        for (var part : BETWEEN.split(r.text(name), -1)) {
            if (part.matches("\\d{1,2}")) {
                days.add(Integer.valueOf(part));
            } else if (!part.isEmpty() && !part.equalsIgnoreCase(NEVER)) {
                r.mend(name, "habits." + name, part);
            }
        }
        return days;
    }

    private static List<LocalTime> hours(FormReader r) {
        var hours = new ArrayList<LocalTime>();
        for (var part : BETWEEN.split(r.text("rounds"), -1)) {
            try {
                hours.add(LocalTime.parse(part));
            } catch (DateTimeException notAnHour) {
                r.mend("rounds", "reader.notAnHour", part);
            }
        }
        return hours;
    }

    private static EntryForm override() {
        return EntryForm.of(
                "species-override",
                Shelf.FARM,
                SpeciesOverridden.class,
                asks -> List.of(
                        asks.known().species(),
                        asks.profileFields(),
                        asks.text("value").optional()),
                r -> {
                    var field = r.text("profile_field");
                    var known = ProfileField.ofWord(field);
                    if (known.isEmpty()) {
                        r.mend("profile_field", "reader.choiceNeeded");
                    } else if (!r.isEmpty("value")) {
                        try {
                            known.get().read(r.text("value"));
                        } catch (OutOfRange refused) {
                            r.mend("value", refused);
                        }
                    }
                    return new SpeciesOverridden(r.species("species"), field, r.text("value"));
                },
                it -> new Written()
                        .species(it.species())
                        .text("profile_field", it.field())
                        .text("value", it.value()));
    }
}
