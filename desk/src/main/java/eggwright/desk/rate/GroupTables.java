package eggwright.desk.rate;

import eggwright.book.picture.Fate;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.words.Words;
import eggwright.rates.Dimension;
import eggwright.rates.GroupRates;
import eggwright.trade.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The counts of all groups, a line each, the whole farm last. */
final class GroupTables {
    private final RatesOf rates;
    private final Locale language;
    private final Words words;
    private final KeyWords keys;

    GroupTables(RatesOf rates, Locale language) {
        this.rates = rates;
        this.language = language;
        this.words = Words.beside(GroupTables.class, language);
        this.keys = new KeyWords(rates.by(), language);
    }

    TableShown counts() {
        var heads = List.of(
                words.say("head." + rates.by().word()),
                words.say("head.eggsSet"),
                words.say("head.hatchOfSet"),
                words.say("head.chicksOfSet"),
                words.say("head.stillIn"),
                words.say("head.undetermined"),
                words.say("head.unaccounted"),
                words.say("head.withOthers"));
        return new TableShown(
                heads,
                rates.report().groups().stream().map(g -> counts(name(g), g)).toList(),
                counts(whole(), rates.report().total()));
    }

    private List<Cell> counts(Cell name, GroupRates group) {
        return List.of(
                name,
                number(group.eggsSet() + group.fromOthers()),
                Cell.of(RatesWorded.say(group.hatchOfSet(), language)),
                Cell.of(RatesWorded.say(group.chicksOfSet(), language)),
                number(group.stillIn()),
                number(group.undetermined()),
                number(group.eggs(Fate.UNACCOUNTED)),
                number(group.countedWithOthers()));
    }

    /** Eggs out at each stage; a stage at which nothing was lost anywhere has no column. */
    TableShown losses() {
        var stages = Stage.losses().stream()
                .filter(s -> rates.report().total().loss(s).eggs() > 0)
                .toList();
        var heads = new ArrayList<>(List.of(
                words.say("head." + rates.by().word()), words.say("head.infertile"), words.say("head.clearUnopened")));
        stages.forEach(s -> heads.add(words.say("fate." + s.word())));
        return new TableShown(
                heads,
                rates.report().groups().stream()
                        .map(g -> losses(name(g), g, stages))
                        .toList(),
                losses(whole(), rates.report().total(), stages));
    }

    private List<Cell> losses(Cell name, GroupRates group, List<Stage> stages) {
        var row = new ArrayList<>(
                List.of(name, number(group.eggs(Fate.INFERTILE)), number(group.eggs(Fate.CLEAR_UNOPENED))));
        stages.forEach(stage -> row.add(number(group.loss(stage).eggs())));
        return List.copyOf(row);
    }

    private Cell name(GroupRates group) {
        return new Cell(keys.of(group), RatePages.path(rates.by(), group.key()));
    }

    private Cell whole() {
        return new Cell(words.say("whole"), RatePages.path(Dimension.NONE, Dimension.ALL));
    }

    /** None leaves its place empty, so that what there is stands out. */
    private Cell number(int eggs) {
        return Cell.of(eggs == 0 ? "" : String.format(language, "%,d", eggs));
    }
}
