package eggwright.desk.rate;

import eggwright.desk.Answer;
import eggwright.desk.Pages;
import eggwright.desk.Routes;
import eggwright.desk.Visit;
import eggwright.desk.live.LiveBook;
import eggwright.desk.rate.RatesPage.Choice;
import eggwright.desk.rate.RatesPage.Section;
import eggwright.desk.rate.RatesPage.Standing;
import eggwright.desk.who.May;
import eggwright.desk.words.Words;
import eggwright.rates.Dimension;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Rates by what the keeper chooses, and one group with all its counts. */
public final class RatePages implements Pages {
    private static final String TEMPLATE = "rate/page.jte";

    /** Tables of more groups than this lie behind one touch: on a phone they are many screens long. */
    private static final int MOST_OPEN = 8;

    private final LiveBook book;
    private final RateBook rates;

    public RatePages(LiveBook book, RateBook rates) {
        this.book = book;
        this.rates = rates;
    }

    @Override
    public void addTo(Routes routes) {
        routes.read("/rates", May.READ, this::rates);
    }

    /** Where the rates of groups of one kind are. */
    public static String path(Dimension by) {
        return "/rates?by=" + by.word();
    }

    /** Where one group is. */
    public static String path(Dimension by, String key) {
        return path(by) + "&of=" + URLEncoder.encode(key, StandardCharsets.UTF_8);
    }

    private Answer rates(Visit visit) {
        var words = Words.beside(RatePages.class, visit.language());
        var asked = visit.asked().text("by");
        var by = asked.isEmpty() ? Optional.of(Dimension.PEN) : dimension(asked);
        if (by.isEmpty()) {
            return Answer.notThere(words.say("notThere", asked));
        }
        var of = visit.asked().one("of");
        if (of.isEmpty() && by.get() != Dimension.NONE) {
            return Answer.page(TEMPLATE, all(by.get(), visit, words));
        }
        var found = rates.by(by.get()).report().groups().stream()
                .filter(g -> g.key().equals(of.orElse(Dimension.ALL)))
                .findFirst();
        return found.map(group ->
                        Answer.page(TEMPLATE, new OneGroup(rates.by(by.get()), group, visit.language()).page(book)))
                .orElseGet(() -> Answer.notThere(words.say("notThere", of.orElse(""))));
    }

    private static Optional<Dimension> dimension(String word) {
        return Arrays.stream(Dimension.values())
                .filter(d -> d.word().equals(word))
                .findFirst();
    }

    private RatesPage all(Dimension by, Visit visit, Words words) {
        var language = visit.language();
        var of = rates.by(by);
        var sections = new ArrayList<Section>();
        if (of.report().groups().isEmpty()) {
            return new RatesPage(words.say("title"), words.say("empty"), List.of(), List.of(), List.of());
        }
        var fertility = rates.fertility(by, language);
        sections.add(new Section(
                words.say("fertility"),
                fertility.isEmpty() ? List.of(words.say("fertility.none")) : List.of(),
                fertility.stream().<eggwright.desk.picture.Picture>map(p -> p).toList(),
                List.of()));
        var hatch = rates.hatch(by, language);
        sections.add(new Section(
                words.say("hatch"),
                hatch.isEmpty() ? List.of(words.say("hatch.none")) : List.of(),
                hatch.stream().<eggwright.desk.picture.Picture>map(p -> p).toList(),
                List.of()));
        if (fertility.isPresent() || hatch.isPresent()) {
            sections.add(new Section(
                    words.say("reading"),
                    List.of(words.say("reading.luck"), words.say("reading.unevened")),
                    List.of(),
                    List.of()));
        }
        var tables = new GroupTables(of, language);
        int groups = of.report().groups().size();
        var fold = groups > MOST_OPEN ? words.say("fold", groups) : "";
        sections.add(new Section(
                words.say("counts"), List.of(words.say("counts.text")), List.of(), List.of(tables.counts()), fold));
        sections.add(new Section(
                words.say("losses"), List.of(words.say("losses.text")), List.of(), List.of(tables.losses()), fold));
        return new RatesPage(
                words.say("title.by", words.say("by." + by.word())),
                words.say("lead"),
                List.of(),
                choices(by, words),
                sections);
    }

    private static List<Choice> choices(Dimension shown, Words words) {
        return Arrays.stream(Dimension.values())
                .filter(d -> d != Dimension.NONE)
                .map(d -> new Choice(
                        path(d), words.say("choice." + d.word()), d == shown ? Standing.SHOWN : Standing.OTHER))
                .toList();
    }
}
