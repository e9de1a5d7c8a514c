package eggwright.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * Reads older written forms upwards, one version at a time. Payloads begin at version 1. A look is at version 2: version
 * 1 held one number for each finding, all of them taken out.
 */
final class Upcasts {
    private static final String LOOKED = "looked";
    private static final int LOOKED_VERSION = 2;

    private Upcasts() {}

    static int current(String kind) {
        return kind.equals(LOOKED) ? LOOKED_VERSION : 1;
    }

    static JsonNode up(String kind, int version, JsonNode payload) {
        return kind.equals(LOOKED)
                        && version < LOOKED_VERSION
                        && payload instanceof ObjectNode look
                        && look.path("removed").isObject()
                ? lookWithTreatment(look)
                : payload;
    }

    private static JsonNode lookWithTreatment(ObjectNode old) {
        var look = old.deepCopy();
        var findings = look.putArray("findings");
        var counts = old.path("removed");
        counts.fieldNames().forEachRemaining(finding -> {
            var count = findings.addObject();
            count.put("finding", finding);
            count.set("seen", counts.get(finding));
            count.set("removed", counts.get(finding));
            count.put("kept_to_open", 0);
        });
        look.remove("removed");
        if (!look.has("removed_unsorted")) {
            look.put("removed_unsorted", 0);
        }
        return look;
    }
}
