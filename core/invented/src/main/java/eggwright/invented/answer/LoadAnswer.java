package eggwright.invented.answer;

import eggwright.book.name.SectionName;
import eggwright.book.name.TrayName;
import eggwright.trade.Species;
import java.util.List;

/** The eggs of one tray as it was set, wherever they were moved later. */
public record LoadAnswer(TrayName tray, SectionName section, Species species, List<EggStory> eggs) {
    public LoadAnswer {
        eggs = List.copyOf(eggs);
    }

    public int fertile() {
        return (int) eggs.stream().filter(e -> e.germ() == Germ.FERTILE).count();
    }

    public int eggs(TrueFate fate) {
        return (int) eggs.stream().filter(e -> e.fate() == fate).count();
    }
}
