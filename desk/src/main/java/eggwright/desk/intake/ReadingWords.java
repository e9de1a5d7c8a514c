package eggwright.desk.intake;

import eggwright.climate.reading.Channel;
import eggwright.climate.reading.Quantity;
import eggwright.climate.reading.ReadingPlace;
import eggwright.climate.reading.ReadingUnit;
import eggwright.desk.words.Words;
import eggwright.sheet.logger.ColumnUse;
import java.math.BigDecimal;

/** Quantities, units, places and readings in words. */
final class ReadingWords {
    private final Words words;

    ReadingWords(Words words) {
        this.words = words;
    }

    /** As "Air temperature, °F". */
    String what(Quantity quantity, ReadingUnit unit) {
        return words.say("what", words.say("quantity." + quantity.word()), unit.sign());
    }

    String what(Channel channel) {
        return words.say("inPlace", what(channel.quantity(), channel.unit()), place(channel.place()));
    }

    String place(ReadingPlace place) {
        return switch (place) {
            case ReadingPlace.InMachine(var machine) -> machine.text();
            case ReadingPlace.EggRoom() -> words.say("place.eggRoom");
            case ReadingPlace.Brooder() -> words.say("place.brooder");
        };
    }

    /** As it came, with its unit: "99.5 °F". */
    String value(double value, ReadingUnit unit) {
        var plain = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return words.say("value", plain.replace('-', '\u2212'), unit.sign());
    }

    String use(ColumnUse use) {
        return switch (use) {
            case ColumnUse.Value(var quantity, var unit) -> what(quantity, unit);
            case ColumnUse.Time() -> words.say("use.time");
            case ColumnUse.Date() -> words.say("use.date");
            case ColumnUse.Clock() -> words.say("use.clock");
            case ColumnUse.Machine() -> words.say("use.machine");
            case ColumnUse.Sensor() -> words.say("use.sensor");
            case ColumnUse.Left() -> words.say("use.left");
        };
    }
}
