package eggwright.desk.rate;

import eggwright.desk.part.RateShown;
import eggwright.desk.picture.IntervalPlot;
import eggwright.desk.picture.IntervalPlot.Standing;
import eggwright.desk.picture.Numbers;
import eggwright.desk.words.Words;
import eggwright.rates.Basis;
import eggwright.rates.Contrast;
import eggwright.rates.GroupRates;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Draws a comparison: what matters first, the farm's own normal behind, the words for luck under each mark. */
final class ComparisonPlot {
    /** More marks than this are not looked at; the rest stand in the numbers. Own choice. */
    private static final int MOST_ROWS = 16;

    private final Comparison comparison;
    private final Locale language;
    private final Words words;
    private final KeyWords keys;
    private final VerdictWords verdicts;

    private ComparisonPlot(Comparison comparison, Locale language) {
        this.comparison = comparison;
        this.language = language;
        this.words = Words.beside(ComparisonPlot.class, language);
        this.keys = new KeyWords(comparison.by(), language);
        this.verdicts = new VerdictWords(language);
    }

    /** Empty where no single group has anything to show. */
    static Optional<IntervalPlot> of(Comparison comparison, String id, Locale language) {
        return comparison.single().isEmpty()
                ? Optional.empty()
                : Optional.of(new ComparisonPlot(comparison, language).draw(id));
    }

    private IntervalPlot draw(String id) {
        var sorted = new ArrayList<>(comparison.single());
        if (!keys.hasItsOwnOrder()) {
            sorted.sort(Compared.WHAT_MATTERS);
        }
        var drawn = sorted.stream().limit(MOST_ROWS).toList();
        var joint = comparison.groups().stream().filter(c -> c.group().isJoint());
        return new IntervalPlot(
                id,
                words.say(
                        "plot." + comparison.figure(),
                        words.say("by." + comparison.by().word())),
                says(sorted, drawn.size()),
                IntervalPlot.Scale.over(ends(drawn)),
                comparison
                        .normal()
                        .map(n -> new IntervalPlot.Band(
                                words.say("normal", RateShown.share(n.pct(), n.lowPct(), n.highPct(), language)),
                                n.lowPct(),
                                n.highPct())),
                drawn.stream().map(this::row).toList(),
                new Numbers(
                        List.of(
                                words.say("head." + comparison.by().word()),
                                words.say("head.counted"),
                                words.say("head.share"),
                                words.say("head.basis"),
                                words.say(corrected() ? "head.restByTheLamp" : "head.rest"),
                                words.say("head.luck")),
                        Stream.concat(sorted.stream(), joint).map(this::numbers).toList()));
    }

    /** Ends of what can be told; what cannot may run off the scale. */
    private List<Double> ends(List<Compared> drawn) {
        var told = drawn.stream().filter(c -> c.standing() != Standing.TOO_FEW).toList();
        var ends = new ArrayList<Double>();
        for (var compared : told.isEmpty() ? drawn : told) {
            ends.add(compared.share().lowPct());
            ends.add(compared.share().highPct());
        }
        comparison.normal().ifPresent(n -> ends.addAll(List.of(n.lowPct(), n.highPct())));
        return ends;
    }

    private IntervalPlot.Row row(Compared compared) {
        var share = compared.share();
        return new IntervalPlot.Row(
                keys.of(compared.group()),
                counted(compared),
                verdicts.say(compared.contrast()),
                share.pct(),
                share.lowPct(),
                share.highPct(),
                compared.standing());
    }

    private String counted(Compared compared) {
        var share = compared.share();
        return words.say(
                corrected() ? "rate.corrected" : "rate",
                compared.counted().count(),
                compared.counted().of(),
                RateShown.share(share.pct(), share.lowPct(), share.highPct(), language));
    }

    private boolean corrected() {
        return comparison.figure() == Comparison.Figure.FERTILITY_CORRECTED;
    }

    /** On what the figure stands that is shown, which need not be all that is known of the group. */
    private Basis basis(GroupRates group) {
        return comparison.figure() == Comparison.Figure.FERTILITY_BY_THE_LAMP ? Basis.APPARENT : group.basis();
    }

    private List<String> numbers(Compared compared) {
        var share = compared.share();
        var rest = compared.contrast().map(Contrast::rest).filter(r -> !r.isEmpty());
        return List.of(
                keys.of(compared.group()),
                words.say(
                        "ofCounted",
                        compared.counted().count(),
                        compared.counted().of()),
                RateShown.share(share.pct(), share.lowPct(), share.highPct(), language),
                words.say("basis." + basis(compared.group()).word()),
                rest.map(r -> RatesWorded.say(r, language)).orElse(""),
                verdicts.say(compared.contrast()));
    }

    private String says(List<Compared> sorted, int drawn) {
        var said = new ArrayList<String>();
        var below = names(sorted, Standing.BELOW);
        var above = names(sorted, Standing.ABOVE);
        if (!below.isEmpty()) {
            said.add(words.say("says.below", below));
        }
        if (!above.isEmpty()) {
            said.add(words.say("says.above", above));
        }
        if (sorted.size() == 1) {
            said.add(words.say("says.alone"));
        } else if (sorted.stream().allMatch(c -> c.standing() == Standing.TOO_FEW)) {
            said.add(words.say("says.tooFew"));
        } else if (below.isEmpty() && above.isEmpty()) {
            said.add(words.say("says.none"));
        }
        said.add(words.say("stands." + comparison.figure()));
        if (!comparison.leftOut().isEmpty()) {
            said.add(words.say("says.leftOut", keys.of(comparison.leftOut())));
        }
        if (drawn < sorted.size()) {
            said.add(words.say("says.more", sorted.size() - drawn));
        }
        return String.join(" ", said);
    }

    private String names(List<Compared> all, Standing standing) {
        return all.stream()
                .filter(c -> c.standing() == standing)
                .map(c -> keys.of(c.group()))
                .collect(Collectors.joining(", "));
    }
}
