package eggwright.desk.intake;

import eggwright.desk.form.Field;
import eggwright.desk.form.Field.Choice;
import eggwright.desk.words.Words;
import eggwright.intake.file.FarmPlaces;
import java.util.ArrayList;
import java.util.List;

/** The choice of a place: each machine, the egg room, the brooder. */
final class PlaceField {
    static final String NAME = "place";

    private PlaceField() {}

    static Choice of(FarmPlaces farm, Words words) {
        return Choice.list(NAME, words.say("field.place"), options(farm, words));
    }

    /** The same, or nowhere, for a file that names its machines itself. */
    static Choice orInTheFile(FarmPlaces farm, Words words) {
        var all = new ArrayList<>(options(farm, words));
        all.add(new Choice.Option(IN_THE_FILE, words.say("place.inTheFile")));
        return Choice.list(NAME, words.say("field.place"), all);
    }

    static final String IN_THE_FILE = "in the file";

    private static List<Field.Choice.Option> options(FarmPlaces farm, Words words) {
        var all = new ArrayList<Choice.Option>();
        farm.machines().forEach(machine -> all.add(new Choice.Option(machine, machine)));
        all.add(new Choice.Option(FarmPlaces.EGG_ROOM, words.say("place.eggRoom")));
        all.add(new Choice.Option(FarmPlaces.BROODER, words.say("place.brooder")));
        return all;
    }
}
