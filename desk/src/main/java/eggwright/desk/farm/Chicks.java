package eggwright.desk.farm;

import eggwright.book.picture.SetPicture;
import eggwright.desk.live.LiveBook;
import eggwright.desk.live.WorkedOut;
import eggwright.desk.words.Words;
import eggwright.forecast.Forecast;
import eggwright.forecast.Forecaster;
import eggwright.forecast.SetForecast;
import eggwright.today.schedule.FarmProfiles;
import java.util.Optional;

/** Chicks to come, worked out once for each change of the book. */
final class Chicks {
    private final WorkedOut<Forecast> forecast;

    Chicks(LiveBook book) {
        this.forecast = new WorkedOut<>(
                book,
                now -> Forecaster.of(
                        now.picture(), FarmProfiles.of(now.picture().farm())::of));
    }

    /** What is foreseen of a set in the machines; empty for any other, and for all but the first of pooled sets. */
    Optional<SetForecast> of(SetPicture set) {
        return forecast.get().sets().stream()
                .filter(f -> f.set().equals(set.name()))
                .findFirst();
    }

    /** The middle and the 80 % range for a set in the machines; empty for any other. */
    String range(SetPicture set, Words words) {
        return of(set).map(f -> range(f, words)).orElse("");
    }

    private static String range(SetForecast forecast, Words words) {
        var most = forecast.chicks().interval(0.8);
        return words.say("range", forecast.chicks().quantile(0.5), most.low(), most.high());
    }
}
