package eggwright.desk.machine;

import eggwright.climate.air.Surroundings;
import eggwright.desk.form.Typed;
import eggwright.desk.machine.CalculatorShown.Field;
import eggwright.desk.machine.CalculatorShown.Kept;
import eggwright.desk.machine.OneMachinePage.Figure;
import eggwright.desk.words.RefusalWords;
import eggwright.desk.words.Words;
import eggwright.egg.air.MoistAir;
import eggwright.egg.air.StandardAtmosphere;
import eggwright.units.Altitude;
import eggwright.units.Humidity;
import eggwright.units.OutOfRange;
import eggwright.units.Pressure;
import eggwright.units.Temperature;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** Dry bulb with wet bulb or humidity in; all that there is to know of the air out. */
final class Calculator {
    static final String DRY = "dry";
    static final String WET = "wet";
    static final String HUMIDITY = "humidity";
    static final String ALTITUDE = "altitude";
    private static final List<String> FIELDS = List.of(DRY, WET, HUMIDITY, ALTITUDE);

    private final Typed asked;
    private final Surroundings farm;
    private final Degrees degrees;
    private final Words words;
    private final RefusalWords refusals;
    private final Map<String, String> messages = new HashMap<>();

    /** @param farm where no altitude is typed */
    Calculator(Typed asked, Surroundings farm, Degrees degrees, Words words) {
        this.asked = asked;
        this.farm = farm;
        this.degrees = degrees;
        this.words = words;
        this.refusals = new RefusalWords(words.language());
    }

    /** @param altitude that the farm noted, to begin with; empty where it did not */
    CalculatorShown shown(Window window, Optional<Altitude> altitude) {
        var answers = FIELDS.stream().limit(3).allMatch(f -> asked.text(f).isEmpty()) ? List.<Figure>of() : answers();
        var fields = new ArrayList<Field>();
        for (var name : FIELDS) {
            var value = name.equals(ALTITUDE) && asked.one(ALTITUDE).isEmpty()
                    ? altitude.map(Heights::typed).orElse("")
                    : asked.text(name);
            fields.add(new Field(
                    name,
                    words.say("calculator." + name),
                    words.say("calculator." + name + ".hint"),
                    value,
                    Objects.requireNonNullElse(messages.get(name), "")));
        }
        var kept = new ArrayList<Kept>();
        kept.add(new Kept(Window.SPAN, window.span().word()));
        if (window.to().isBefore(window.now())) {
            kept.add(new Kept(Window.TO, window.to().toString()));
        }
        return new CalculatorShown(kept, fields, answers);
    }

    private List<Figure> answers() {
        var dry = read(DRY, Temperature::parse).flatMap(t -> inside(DRY, t));
        var wet = read(WET, Temperature::parse).flatMap(t -> inside(WET, t));
        var humidity = read(HUMIDITY, Humidity::parse);
        var barometer = read(ALTITUDE, Altitude::parse)
                .map(height -> StandardAtmosphere.at(height).pressure())
                .orElse(asked.one(ALTITUDE).isPresent() ? Pressure.SEA_LEVEL : farm.barometer());
        if (dry.isEmpty()) {
            messages.putIfAbsent(DRY, words.say("calculator.dryMissing"));
        }
        if (wet.isPresent() && humidity.isPresent()) {
            messages.putIfAbsent(HUMIDITY, words.say("calculator.oneOfThem"));
        }
        if (messages.isEmpty() && wet.isEmpty() && humidity.isEmpty()) {
            messages.put(WET, words.say("calculator.wetMissing"));
        }
        if (!messages.isEmpty()) {
            return List.of();
        }
        return wet.isPresent()
                ? ofWetBulb(dry.orElseThrow(), wet.get(), barometer)
                : answers(MoistAir.of(dry.orElseThrow(), humidity.orElseThrow(), barometer));
    }

    private List<Figure> ofWetBulb(Temperature dry, Temperature wet, Pressure barometer) {
        if (wet.celsius() > dry.celsius()) {
            messages.put(WET, words.say("calculator.wetAboveDry"));
            return List.of();
        }
        try {
            return answers(MoistAir.ofWetBulb(dry, wet, barometer, farm.ventilation()));
        } catch (OutOfRange noSuchAir) {
            messages.put(WET, words.say("calculator.noSuchAir"));
            return List.of();
        }
    }

    private List<Figure> answers(MoistAir air) {
        var answers = new ArrayList<Figure>();
        answers.add(Figure.of(
                words.say("now.humidity"), degrees.number(air.humidity().pct()) + "\u00a0%"));
        wetBulb(air).ifPresent(wet -> answers.add(Figure.of(words.say("now.wet"), both(wet))));
        answers.add(Figure.of(
                words.say("now.dewPoint"),
                air.dewPoint().map(Calculator.this::both).orElseGet(() -> words.say("now.noDew"))));
        answers.add(Figure.of(words.say("now.absolute"), absolute(air, degrees)));
        answers.add(Figure.of(
                words.say("calculator.pressure"), degrees.number(air.barometer().hectopascals()) + "\u00a0hPa"));
        return answers;
    }

    static String absolute(MoistAir air, Degrees degrees) {
        return degrees.number(air.absoluteHumidityGramsPerCubicMetre()) + "\u00a0g/m³";
    }

    private Optional<Temperature> wetBulb(MoistAir air) {
        try {
            return Optional.of(air.wetBulb(farm.ventilation()));
        } catch (OutOfRange frozen) {
            return Optional.empty();
        }
    }

    /** In both units: whoever reckons often goes from one to the other. */
    private String both(Temperature temperature) {
        return degrees.number(temperature.fahrenheit()) + "\u00a0°F, " + degrees.number(temperature.celsius())
                + "\u00a0°C";
    }

    private <T> Optional<T> read(String field, Function<String, T> parse) {
        if (asked.text(field).isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(parse.apply(asked.text(field)));
        } catch (OutOfRange refused) {
            messages.put(field, refusals.say(refused));
            return Optional.empty();
        }
    }

    /** Asks where Fahrenheit was typed as Celsius. */
    private Optional<Temperature> inside(String field, Temperature typed) {
        double celsius = typed.celsius();
        if (celsius >= MoistAir.COLDEST_CELSIUS && celsius <= MoistAir.HOTTEST_CELSIUS) {
            return Optional.of(typed);
        }
        messages.put(
                field,
                typed.scale() == Temperature.Scale.CELSIUS && celsius > MoistAir.HOTTEST_CELSIUS
                        ? words.say("calculator.fahrenheit", typed.toString(), degrees.number(typed.number()) + "F")
                        : words.say("calculator.outside", typed.toString()));
        return Optional.empty();
    }
}
