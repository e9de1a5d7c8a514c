package eggwright.invented.season;

import eggwright.book.name.BasketName;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.invented.answer.LoadAnswer;
import eggwright.invented.truth.SectionTruth;
import eggwright.trade.Species;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One filling of one tray. */
final class Load {
    final SetName set;
    final TrayName tray;
    final Species species;
    final SectionTruth section;
    /** As it was filled. */
    final List<Egg> eggs;

    /** What is in it now; eggs pooled from other trays among them. */
    List<Egg> inside;

    /** Absent until transferred. */
    @Nullable BasketName basket;

    Load(SetName set, TrayName tray, Species species, SectionTruth section, List<Egg> eggs) {
        this.set = set;
        this.tray = tray;
        this.species = species;
        this.section = section;
        this.eggs = List.copyOf(eggs);
        this.inside = new ArrayList<>(eggs);
    }

    LoadAnswer answer() {
        return new LoadAnswer(
                tray,
                new eggwright.book.name.SectionName(section.name()),
                species,
                eggs.stream().map(Egg::story).toList());
    }
}
