package eggwright.desk.machine;

import eggwright.climate.reading.ReadingPlace;
import eggwright.desk.words.Words;

/** What a place with sensors is called at the head of a sentence. */
final class RoomNames {
    private RoomNames() {}

    static String say(ReadingPlace place, Words words) {
        return switch (place) {
            case ReadingPlace.InMachine(var machine) -> machine.text();
            case ReadingPlace.EggRoom room -> words.say("the.eggRoom");
            case ReadingPlace.Brooder brooder -> words.say("the.brooder");
        };
    }
}
