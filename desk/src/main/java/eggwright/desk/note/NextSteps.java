package eggwright.desk.note;

import eggwright.book.entry.BrokenOut;
import eggwright.book.entry.EggsMoved;
import eggwright.book.entry.EggsSet;
import eggwright.book.entry.Looked;
import eggwright.book.entry.Payload;
import eggwright.book.entry.Pull;
import eggwright.book.entry.ReadingsReleased;
import eggwright.book.entry.SensorAt;
import eggwright.book.entry.SensorCompared;
import eggwright.book.entry.SensorTrustChanged;
import eggwright.book.entry.TakenOff;
import eggwright.book.entry.Transferred;
import eggwright.book.fold.Effective;
import eggwright.book.name.SetName;
import eggwright.book.name.TrayName;
import eggwright.book.picture.LoadPhase;
import eggwright.book.picture.LoadPicture;
import eggwright.book.picture.Picture;
import eggwright.desk.part.NoticeShown.Next;
import eggwright.desk.words.Words;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the work goes on after a note: the next tray at the lamp, the next pull, the set. */
final class NextSteps {
    private NextSteps() {}

    static List<Next> after(Effective entry, Picture picture, Words words) {
        var next = new ArrayList<Next>();
        var payload = entry.payload();
        var set = set(payload);
        if (payload instanceof Looked) {
            set.flatMap(s -> nextTray(s, entry.at(), picture).map(tray -> candle(s, tray, words)))
                    .ifPresent(next::add);
        }
        if (payload instanceof TakenOff pull && set.isPresent()) {
            next.add(
                    pull.pull() == Pull.MORE_TO_COME
                            ? new Next(form("taken-off", set.get()), words.say("next.pull"))
                            : new Next(
                                    form("broken-out", set.get()),
                                    words.say("next.open", set.get().text())));
        }
        if (next.isEmpty() && EntryForms.of(payload.kindWord()).isPresent()) {
            next.add(new Next("/notes/" + payload.kindWord(), words.say("next.another")));
        }
        set.ifPresent(s -> next.add(new Next("/sets/" + encoded(s.text()), words.say("next.set", s.text()))));
        sensor(payload).ifPresent(s -> next.add(new Next(sensorsOf(s), words.say("next.sensors"))));
        next.add(new Next("/", words.say("next.today")));
        return next;
    }

    private static Optional<SensorAt> sensor(Payload payload) {
        return payload instanceof SensorCompared it
                ? Optional.of(it.sensor())
                : payload instanceof SensorTrustChanged it
                        ? Optional.of(it.sensor())
                        : payload instanceof ReadingsReleased it ? Optional.of(it.sensor()) : Optional.empty();
    }

    private static String sensorsOf(SensorAt sensor) {
        var machine = sensor.machine();
        return switch (sensor.place()) {
            case IN_MACHINE -> "/machines/" + encoded(machine == null ? "" : machine.text()) + "/sensors";
            case EGG_ROOM -> "/egg-room/sensors";
            case BROODER -> "/brooder/sensors";
        };
    }

    private static Next candle(SetName set, TrayName tray, Words words) {
        return new Next(form("looked", set) + "&tray=" + encoded(tray.text()), words.say("next.candle", tray.text()));
    }

    private static Optional<SetName> set(Payload payload) {
        var scope = payload instanceof Looked it
                ? it.scope()
                : payload instanceof TakenOff it ? it.counted() : payload instanceof BrokenOut it ? it.scope() : null;
        if (scope != null) {
            return Optional.ofNullable(scope.set());
        }
        if (payload instanceof EggsSet it) {
            return Optional.of(it.set());
        }
        if (payload instanceof EggsMoved it) {
            return Optional.of(it.toSet());
        }
        return payload instanceof Transferred it
                ? Optional.of(it.eggs().getFirst().set())
                : Optional.empty();
    }

    /** The first tray of the set, still in the setter, that was not looked at on this day. */
    private static Optional<TrayName> nextTray(SetName set, OffsetDateTime at, Picture picture) {
        return picture.set(set).stream()
                .flatMap(s -> s.loads().values().stream())
                .filter(load -> load.phase() == LoadPhase.IN_SETTER)
                .filter(load -> !wasLookedAt(load, at))
                .map(load -> load.ref().tray())
                .findFirst();
    }

    private static boolean wasLookedAt(LoadPicture load, OffsetDateTime at) {
        return load.looks().stream().anyMatch(look -> look.at().toLocalDate().equals(at.toLocalDate()));
    }

    private static String form(String kind, SetName set) {
        return "/notes/" + kind + "?set=" + encoded(set.text());
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
