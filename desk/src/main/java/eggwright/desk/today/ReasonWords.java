package eggwright.desk.today;

import eggwright.desk.words.Days;
import eggwright.desk.words.Words;
import eggwright.today.task.Bundle;
import eggwright.today.task.Reason;
import java.text.NumberFormat;
import java.util.List;
import java.util.stream.Collectors;

/** Why now, in words, with where the figure is from. */
final class ReasonWords {
    private final Words words;

    ReasonWords(Words words) {
        this.words = words;
    }

    /** As "Why now: pheasant, transfer on day 21 (common practice, no source)". */
    String of(Bundle bundle) {
        List<String> reasons = bundle.tasks().stream()
                .flatMap(t -> t.reasons().stream())
                .map(this::say)
                .distinct()
                .toList();
        return words.say("why", reasons.stream().collect(Collectors.joining("; ")));
    }

    private String say(Reason reason) {
        return switch (reason) {
            case Reason.SpeciesDay it ->
                words.say(
                        "why.day",
                        words.species(it.species()),
                        it.field().label(),
                        number(it.day()),
                        it.source().words());
            case Reason.StorageAdvice it ->
                words.say(
                        "why.storage",
                        words.species(it.species()),
                        number(it.days()),
                        it.source().words());
            case Reason.FarmHabit it -> words.say("why.habit." + it.habit().word());
            case Reason.Custom it ->
                words.say(
                        "why.custom",
                        words.say("practice." + it.practice().word()),
                        it.source().words());
            case Reason.Promised it ->
                words.say("why.promised", Days.in(words.language()).day(it.day()));
        };
    }

    private String number(double days) {
        return NumberFormat.getInstance(words.language()).format(days);
    }
}
