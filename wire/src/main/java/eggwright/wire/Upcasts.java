package eggwright.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import eggwright.book.entry.Payload;
import eggwright.book.entry.PayloadKinds;
import eggwright.book.entry.UnknownPayload;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Reads older written forms upwards, one version at a time. Payloads begin at version 1; a kind listed here is at one
 * version more for each step. A step is never changed once released: files of its version lie on farms.
 */
final class Upcasts {
    private static final Map<String, List<Function<ObjectNode, ObjectNode>>> STEPS = Map.of(
            "looked", List.of(Upcasts::lookWithTreatment, Upcasts::lookWithPlaces),
            "incident", List.of(Upcasts::incidentWithHeat),
            "farm-habits", List.of(Upcasts::habitsWithTrays, Upcasts::habitsWithAir));

    private Upcasts() {}

    /** The version in which payloads of a kind are written now. */
    static int current(String kind) {
        return 1 + STEPS.getOrDefault(kind, List.of()).size();
    }

    /**
     * The version with which a payload inside a mend is labelled. An unknown payload of a known kind is of some newer
     * version; which one stands in the received text only.
     */
    static int written(Payload payload) {
        var kind = payload.kindWord();
        return payload instanceof UnknownPayload && PayloadKinds.byWord(kind).isPresent()
                ? current(kind) + 1
                : current(kind);
    }

    static JsonNode up(String kind, int version, JsonNode payload) {
        if (version == current(kind)) {
            return payload;
        }
        var steps = STEPS.getOrDefault(kind, List.of());
        var risen = ((ObjectNode) payload).deepCopy();
        for (var step : steps.subList(version - 1, steps.size())) {
            risen = step.apply(risen);
        }
        return risen;
    }

    /**
     * Version 1 of a look held one number for each finding, all of them taken out:
     * {@code "removed":{"clear":5,"dead":1}}. Version 2 has how many were seen, and what was done with them.
     */
    private static ObjectNode lookWithTreatment(ObjectNode look) {
        var counts = look.path("removed");
        if (!look.has("findings")) {
            var findings = look.putArray("findings");
            for (var count : counts.properties()) {
                var finding = findings.addObject();
                finding.put("finding", count.getKey());
                finding.set("seen", count.getValue());
                finding.set("removed", count.getValue());
                finding.put("kept_to_open", 0);
            }
        }
        if (!look.has("removed_unsorted")) {
            look.put("removed_unsorted", 0);
        }
        look.remove("removed");
        return look;
    }

    /** Version 2 may say how a tray is laid out and how long it may be out; version 1 said neither. */
    private static ObjectNode habitsWithTrays(ObjectNode habits) {
        return habits;
    }

    /** Version 3 may say how high the farm lies and what its wet bulbs stand in; version 2 said neither. */
    private static ObjectNode habitsWithAir(ObjectNode habits) {
        return habits;
    }

    /** Version 2 may say how far the air went, and knows doors and fans; version 1 did neither. */
    private static ObjectNode incidentWithHeat(ObjectNode incident) {
        return incident;
    }

    /** Version 3 may say where in the tray eggs lay, and of which sort the look was; version 2 said neither. */
    private static ObjectNode lookWithPlaces(ObjectNode look) {
        return look;
    }
}
