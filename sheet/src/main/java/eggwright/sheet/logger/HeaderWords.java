package eggwright.sheet.logger;

import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What the name of a column says by itself. Names of columns are free; these are the words that people use in them. */
final class HeaderWords {
    private static final Pattern FAHRENHEIT =
            Pattern.compile("°\\s*f\\b|℉|\\(f\\)|\\[f\\]|\\bdeg\\.?\\s*f\\b|fahrenheit|_f\\b|\\bf$");
    private static final Pattern CELSIUS =
            Pattern.compile("°\\s*c\\b|℃|\\(c\\)|\\[c\\]|\\bdeg\\.?\\s*c\\b|celsius|centigrade|_c\\b|\\bc$");
    private static final Pattern WET = Pattern.compile("wet|psychro");
    private static final Pattern DEW = Pattern.compile("dew|frost|vpd|absolute|heat index");
    private static final Pattern HUMIDITY = Pattern.compile("humid|\\brh\\b|r\\.h\\.|_rh\\b|\\bhum\\b|\\brel\\b|%");
    private static final Pattern PRESSURE = Pattern.compile("press|baro|\\bhpa\\b|\\bmbar\\b");
    private static final Pattern EGG = Pattern.compile("\\begg\\b|shell");
    private static final Pattern EGG_ROOM = Pattern.compile("egg\\s*room");
    private static final Pattern TEMPERATURE = Pattern.compile("temp|\\bdry\\b|°|℃|℉|\\bair\\b|^t$|^t\\d|probe");
    private static final Pattern MACHINE = Pattern.compile("machine|setter|hatcher|incubator|cabinet|location|place");
    private static final Pattern SENSOR = Pattern.compile("sensor|channel|serial|device|logger|\\bid\\b");
    private static final Pattern CLOCK_ONLY = Pattern.compile("\\btime\\b|clock|\\bhour\\b");
    private static final Pattern DATE_ONLY = Pattern.compile("\\bdate\\b|\\bday\\b");
    private static final Pattern BOTH = Pattern.compile("date.*time|time.*date|timestamp|date/time|datetime|\\bat\\b");

    private static final Pattern ONLY_UNIT = Pattern.compile("[(\\[]?(°?\\s*[cf]|℃|℉|%|% ?rh|hpa|kpa|mbar)[)\\]]?");

    private final String name;

    HeaderWords(String name) {
        this.name = name.toLowerCase(Locale.ROOT);
    }

    Optional<Quantity> quantity() {
        if (has(DEW)) {
            return Optional.empty();
        }
        if (has(WET)) {
            return Optional.of(Quantity.WET_BULB);
        }
        if (has(PRESSURE)) {
            return Optional.of(Quantity.PRESSURE);
        }
        if (has(HUMIDITY)) {
            return Optional.of(Quantity.HUMIDITY);
        }
        if (has(EGG) && !has(EGG_ROOM)) {
            return Optional.of(Quantity.EGG_TEMPERATURE);
        }
        return has(TEMPERATURE) || unit().isPresent() ? Optional.of(Quantity.AIR_TEMPERATURE) : Optional.empty();
    }

    /** Of a temperature. */
    Optional<ReadingUnit> unit() {
        if (has(FAHRENHEIT)) {
            return Optional.of(ReadingUnit.FAHRENHEIT);
        }
        return has(CELSIUS) ? Optional.of(ReadingUnit.CELSIUS) : Optional.empty();
    }

    /** Whether it is nothing but a unit. */
    boolean isUnit() {
        return ONLY_UNIT.matcher(name).matches();
    }

    boolean saysMachine() {
        return has(MACHINE);
    }

    boolean saysSensor() {
        return has(SENSOR);
    }

    /** 2 where it says both date and time, 1 where one of them. */
    int timeWords() {
        return has(BOTH) ? 2 : has(CLOCK_ONLY) || has(DATE_ONLY) ? 1 : 0;
    }

    private boolean has(Pattern words) {
        return words.matcher(name).find();
    }
}
