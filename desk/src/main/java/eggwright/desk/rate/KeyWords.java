package eggwright.desk.rate;

import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.rates.Dimension;
import eggwright.rates.GroupRates;
import eggwright.trade.Species;
import eggwright.trade.SpeciesWord;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Names of groups as a person says them. */
final class KeyWords {
    private final Dimension by;
    private final Words words;
    private final Days days;

    KeyWords(Dimension by, Locale language) {
        this.by = by;
        this.words = Words.beside(KeyWords.class, language);
        this.days = Days.in(language);
    }

    String of(GroupRates group) {
        return of(group.keys());
    }

    String of(List<String> keys) {
        return keys.stream().map(this::of).collect(Collectors.joining(" + "));
    }

    String of(String key) {
        if (key.equals(Dimension.NOT_RECORDED)) {
            return words.say("notRecorded");
        }
        if (key.equals(Dimension.ALL) && by == Dimension.NONE) {
            return words.say("whole");
        }
        return switch (by) {
            case LAY_WEEK, SET_WEEK -> week(key);
            case STORAGE_DAYS -> storage(key);
            case SPECIES -> species(key);
            case PEN, SET, TRAY, MACHINE, SECTION, NONE -> key;
        };
    }

    /** With its kind, as "pen Willow". */
    String named(List<String> keys) {
        var name = of(keys);
        return switch (by) {
            case PEN, SET, TRAY, MACHINE, SECTION -> words.say("named." + by.word(), name);
            case LAY_WEEK, SET_WEEK, STORAGE_DAYS -> words.say("named." + by.word(), name);
            case SPECIES, NONE -> name;
        };
    }

    /** What was not recorded is no bird. */
    private String species(String key) {
        return Species.parse(key) instanceof SpeciesWord.Known(var species) ? words.species(species) : key;
    }

    private String week(String key) {
        try {
            return days.week(LocalDate.parse(key + "-1", DateTimeFormatter.ISO_WEEK_DATE));
        } catch (DateTimeParseException unknown) {
            return key;
        }
    }

    private String storage(String key) {
        try {
            return words.say("days", Long.parseLong(key));
        } catch (NumberFormatException unknown) {
            return key;
        }
    }

    /** Weeks and days stand in their order, which is what a person looks for; the rest by what matters. */
    boolean hasItsOwnOrder() {
        return switch (by) {
            case LAY_WEEK, SET_WEEK, STORAGE_DAYS -> true;
            case PEN, SET, TRAY, MACHINE, SECTION, SPECIES, NONE -> false;
        };
    }
}
