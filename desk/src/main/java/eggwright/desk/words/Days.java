package eggwright.desk.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/** Days and times as the language of a page writes them. The patterns stand in the bundle beside this class. */
public final class Days {
    private final Words words;

    private Days(Words words) {
        this.words = words;
    }

    public static Days in(Locale language) {
        return new Days(Words.beside(Days.class, language));
    }

    /** With its weekday, as "Mon 5 Apr". */
    public String day(TemporalAccessor day) {
        return format(words.say("pattern.day"), day);
    }

    /** As "5 Apr". */
    public String shortDay(TemporalAccessor day) {
        return format(words.say("pattern.shortDay"), day);
    }

    /** Day and hour, as "Mon 5 Apr 18:30". */
    public String stamp(TemporalAccessor moment) {
        return format(words.say("pattern.stamp"), moment);
    }

    /** In full, without the year, as "Monday 5 April". */
    public String fullDay(TemporalAccessor day) {
        return format(words.say("pattern.fullDay"), day);
    }

    /** Without its weekday, as "5 April". */
    public String longDay(TemporalAccessor day) {
        return format(words.say("pattern.longDay"), day);
    }

    /** As "18:30". */
    public String hour(TemporalAccessor moment) {
        return format(words.say("pattern.hour"), moment);
    }

    /** For records, with the year, as "2027-04-05 18:30". */
    public String recordStamp(TemporalAccessor moment) {
        return format(words.say("pattern.recordStamp"), moment);
    }

    /** As "week of 5 Apr". */
    public String week(LocalDate monday) {
        return words.say("week", shortDay(monday));
    }

    private String format(String pattern, TemporalAccessor time) {
        return DateTimeFormatter.ofPattern(pattern, words.language()).format(time);
    }
}
