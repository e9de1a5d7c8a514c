package eggwright.desk.intake;

import eggwright.desk.words.Words;
import eggwright.intake.Incoming;
import eggwright.intake.mqtt.Broker;
import eggwright.intake.mqtt.BrokerState;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** How it stands with the broker, in sentences. */
final class BrokerWords {
    private final Words words;
    private final Function<Instant, String> stamp;

    BrokerWords(Words words, Function<Instant, String> stamp) {
        this.words = words;
        this.stamp = stamp;
    }

    List<String> say(Incoming.Heard heard) {
        var said = new ArrayList<String>();
        var broker = heard.broker();
        said.add(
                switch (heard.state()) {
                    case BrokerState.Beginning() -> words.say("broker.beginning", broker.address());
                    case BrokerState.Listening(var since) ->
                        words.say("broker.listening", broker.address(), stamp.apply(since));
                    case BrokerState.Away(var why, var detail, var since, var tries, var next) ->
                        words.say("broker.away", broker.address(), stamp.apply(since)) + " "
                                + words.say("broker." + why) + " "
                                + words.say("broker.next", tries, stamp.apply(next))
                                + (detail.isEmpty() ? "" : " " + words.say("broker.detail", detail));
                });
        said.add(words.say("broker.topic", broker.topic()));
        if (broker.scheme() == Broker.Scheme.MQTT) {
            said.add(words.say("broker.open"));
        }
        return said;
    }
}
