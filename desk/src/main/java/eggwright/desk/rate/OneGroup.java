package eggwright.desk.rate;

import eggwright.desk.live.LiveBook;
import eggwright.desk.part.RateShown;
import eggwright.desk.part.TableShown;
import eggwright.desk.part.TableShown.Cell;
import eggwright.desk.rate.RatesPage.Choice;
import eggwright.desk.rate.RatesPage.Section;
import eggwright.desk.rate.RatesPage.Standing;
import eggwright.desk.words.Words;
import eggwright.rates.Contrast;
import eggwright.rates.Contrasts;
import eggwright.rates.Dimension;
import eggwright.rates.GroupRates;
import eggwright.rates.StageLoss;
import eggwright.today.schedule.FarmProfiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** One group: its eggs as a bar, its rates beside the whole farm's, its losses by stage, and when its dead died. */
final class OneGroup {
    private final RatesOf rates;
    private final GroupRates group;
    private final Locale language;
    private final Words words;
    private final KeyWords keys;

    OneGroup(RatesOf rates, GroupRates group, Locale language) {
        this.rates = rates;
        this.group = group;
        this.language = language;
        this.words = Words.beside(OneGroup.class, language);
        this.keys = new KeyWords(rates.by(), language);
    }

    RatesPage page(LiveBook book) {
        var name = keys.named(group.keys());
        var eggs = group.eggsSet() + group.fromOthers();
        var sections = new ArrayList<Section>();
        if (eggs > 0) {
            sections.add(new Section(
                    words.say("account"),
                    List.of(),
                    List.of(Accounts.bar(
                            words.say("account.of", name),
                            words.say("account.says", eggs),
                            eggs,
                            group.fates(),
                            group.countedWithOthers(),
                            Optional.empty(),
                            language)),
                    List.of()));
        }
        sections.add(new Section(words.say("rates"), luck(), List.of(), List.of(figures())));
        sections.add(
                new Section(words.say("losses"), List.of(words.say("losses.shares")), List.of(), List.of(losses())));
        var picture = book.picture();
        var windows =
                new DeathRows(FarmProfiles.of(picture.farm())::of, language).of(picture, rates.by(), group.keys());
        if (!windows.rows().isEmpty()) {
            sections.add(
                    new Section(words.say("deaths"), List.of(words.say("deaths.text")), List.of(), List.of(windows)));
        }
        var back = rates.by() == Dimension.NONE ? Dimension.PEN : rates.by();
        return new RatesPage(
                name.substring(0, 1).toUpperCase(language) + name.substring(1),
                words.say(group.isJoint() ? "one.joint" : "one.lead", eggs),
                List.of(new Choice(
                        RatePages.path(back), words.say("back", words.say("by." + back.word())), Standing.OTHER)),
                List.of(),
                sections);
    }

    private List<String> luck() {
        var said = new ArrayList<String>();
        said.addAll(luck(rates.fertilityContrasts()));
        said.addAll(luck(rates.hatchContrasts()));
        return said;
    }

    private List<String> luck(Contrasts contrasts) {
        var verdicts = new VerdictWords(language);
        return contrasts.contrasts().stream()
                .filter(c -> !group.isJoint() && c.key().equals(group.key()))
                .filter(c -> !c.rest().isEmpty())
                .map(c -> words.say(
                        "luck",
                        words.say("measure." + contrasts.measure()),
                        RatesWorded.say(c.group(), language),
                        RatesWorded.say(c.rest(), language),
                        verdicts.say(Optional.<Contrast>of(c))))
                .toList();
    }

    private TableShown figures() {
        var whole = rates.report().total();
        var rows = new ArrayList<List<Cell>>();
        rows.add(row("fertility", this::fertility, whole));
        if (group.bounds().low().count() < group.bounds().high().count()) {
            rows.add(row("bounds", this::bounds, whole));
        }
        if (group.trueFertility() != null) {
            rows.add(row("trueFertility", this::corrected, whole));
        }
        rows.add(row("apparent", g -> RatesWorded.say(g.apparentFertility(), language), whole));
        rows.add(row("hatchOfSet", g -> RatesWorded.say(g.hatchOfSet(), language), whole));
        rows.add(row("hatchOfFertile", g -> RatesWorded.say(g.hatchOfFertile(), language), whole));
        rows.add(row("chicksOfSet", g -> RatesWorded.say(g.chicksOfSet(), language), whole));
        rows.add(row("saleableShare", g -> RatesWorded.say(g.saleableShare(), language), whole));
        return new TableShown(List.of(words.say("head.rate"), words.say("head.here"), words.say("whole")), rows);
    }

    private List<Cell> row(String key, Function<GroupRates, String> say, GroupRates whole) {
        return List.of(Cell.of(words.say(key)), Cell.of(say.apply(group)), Cell.of(say.apply(whole)));
    }

    /** With what it stands on, which may differ between a group and the whole farm. */
    private String fertility(GroupRates of) {
        return of.fertility().isEmpty()
                ? words.say("notYet")
                : words.say(
                        "fertility.standsOn",
                        RatesWorded.say(of.fertility(), language),
                        words.say("basis." + of.basis().word()));
    }

    private String bounds(GroupRates of) {
        return of.fertility().isEmpty()
                ? words.say("notYet")
                : words.say(
                        "bounds.value",
                        String.format(language, "%.0f", of.bounds().low().pct()),
                        String.format(language, "%.0f", of.bounds().high().pct()),
                        of.undetermined());
    }

    private String corrected(GroupRates of) {
        var share = of.trueFertility();
        return share == null
                ? words.say("notYet")
                : RateShown.share(100 * share.estimate(), 100 * share.low(), 100 * share.high(), language);
    }

    private TableShown losses() {
        var whole = rates.report().total();
        var rows = new ArrayList<List<Cell>>();
        for (var loss : group.losses()) {
            var there = whole.loss(loss.stage());
            if (there.eggs() > 0) {
                rows.add(List.of(
                        Cell.of(words.say("fate." + loss.stage().word())),
                        Cell.of(loss.eggs()),
                        Cell.of(RatesWorded.say(loss.ofFertile(), language)),
                        Cell.of(RatesWorded.say(loss.ofSet(), language)),
                        Cell.of(ofFertile(there))));
            }
        }
        return new TableShown(
                List.of(
                        words.say("head.stage"),
                        words.say("head.eggs"),
                        words.say("head.ofFertile"),
                        words.say("head.ofSet"),
                        words.say("head.wholeOfFertile")),
                rows);
    }

    private String ofFertile(StageLoss loss) {
        return RatesWorded.say(loss.ofFertile(), language);
    }
}
