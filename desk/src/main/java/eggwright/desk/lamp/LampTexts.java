package eggwright.desk.lamp;

import eggwright.desk.assets.Assets;
import eggwright.desk.words.Words;
import eggwright.wire.RecordText;
import java.util.List;

/** The texts that go with the page onto the phone. */
final class LampTexts {
    /** Texts of the page begin so in the bundle; the others are the desk's own. */
    private static final String OF_THE_PAGE = "page.";

    private final Words words;

    LampTexts(Words words) {
        this.words = words;
    }

    Words words() {
        return words;
    }

    LampPage page() {
        return new LampPage(words.say("title"), RecordText.of(words.all(OF_THE_PAGE)), words.say("noScript"));
    }

    /** How a phone keeps the page among its programs. */
    String manifest(Assets assets) {
        return RecordText.of(new Manifest(
                words.say("title"),
                words.say("shortTitle"),
                "/lamp",
                "/lamp",
                "standalone",
                "portrait",
                "#000000",
                "#000000",
                List.of(
                        new Icon(assets.url("icon/lamp.png"), "512x512", "image/png", "any"),
                        new Icon(assets.url("icon/lamp.png"), "512x512", "image/png", "maskable"))));
    }

    private record Manifest(
            String name,
            String shortName,
            String startUrl,
            String scope,
            String display,
            String orientation,
            String backgroundColor,
            String themeColor,
            List<Icon> icons) {}

    private record Icon(String src, String sizes, String type, String purpose) {}
}
