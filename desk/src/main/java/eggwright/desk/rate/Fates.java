package eggwright.desk.rate;

import eggwright.book.picture.Fate;
import eggwright.desk.picture.Ink;

/** How a fate is drawn. */
final class Fates {
    private Fates() {}

    static Ink ink(Fate fate) {
        return switch (fate) {
            case INFERTILE, CLEAR_UNOPENED -> Ink.CLEAR;
            case BLOOD_RING, EARLY_DEAD -> Ink.DEAD_EARLY;
            case DEAD, MID_DEAD -> Ink.DEAD_MIDDLE;
            case LATE_DEAD, MALFORMED -> Ink.DEAD_LATE;
            case PIPPED_DEAD, PIPPED_ALIVE_LEFT -> Ink.PIPPED;
            case CRACKED, ROT, CONTAMINATED, REMOVED_UNSORTED -> Ink.SPOILT;
            case DEAD_IN_BASKET -> Ink.IN_BASKET;
            case CULLED -> Ink.CULLED;
            case SALEABLE -> Ink.SALEABLE;
            case IN_SETTER, IN_HATCHER -> Ink.STILL_IN;
            case UNACCOUNTED -> Ink.UNACCOUNTED;
        };
    }
}
