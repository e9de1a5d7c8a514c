package eggwright.book.picture;

import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;

/** One filling of one tray: a tray is used once in a set. */
public record LoadRef(SetName set, TrayName tray) implements Comparable<LoadRef> {
    @Override
    public int compareTo(LoadRef other) {
        int order = set.compareTo(other.set);
        return order != 0 ? order : tray.compareTo(other.tray);
    }

    @Override
    public String toString() {
        return set + "/" + tray;
    }
}
