package eggwright.desk;

import java.util.List;

/** The places of the desk, in the order of its navigation. */
public enum Place {
    TODAY("/"),
    LAMP("/lamp"),
    SETS("/sets"),
    NOTES("/notes"),
    EGG_ROOM("/egg-room"),
    PENS("/pens"),
    RATES("/rates"),
    MACHINES("/machines"),
    BOOK("/book"),
    SETTINGS("/settings"),
    /** Somewhere that is in no list, as the page for what is not there. */
    ELSEWHERE("/");

    /** All that are listed beside the page. */
    public static final List<Place> LISTED =
            List.of(TODAY, LAMP, SETS, NOTES, EGG_ROOM, PENS, RATES, MACHINES, BOOK, SETTINGS);
    /** Those in reach of a thumb on a phone. */
    public static final List<Place> AT_HAND = LISTED.subList(0, 4);
    /** Those behind one more touch on a phone. */
    public static final List<Place> FURTHER = LISTED.subList(4, LISTED.size());

    private final String path;

    Place(String path) {
        this.path = path;
    }

    public String path() {
        return path;
    }
}
