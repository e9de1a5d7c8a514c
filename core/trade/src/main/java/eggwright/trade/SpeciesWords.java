package eggwright.trade;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The words that people use for a species. Synonyms are common practice, no source. */
final class SpeciesWords {
    private static final Map<String, Species> BY_WORD = words();

    private SpeciesWords() {}

    static SpeciesWord read(String text) {
        var plain = plain(text);
        var species = BY_WORD.get(plain);
        if (species == null && plain.endsWith("s")) {
            species = BY_WORD.get(plain.substring(0, plain.length() - 1));
        }
        return species == null ? new SpeciesWord.Unknown(text, nearest(plain)) : new SpeciesWord.Known(species);
    }

    /** What a table of ours calls a species; empty for other birds. The long way round is for what people type. */
    static Optional<Species> ofTable(String word) {
        return Optional.ofNullable(BY_WORD.get(word.replace('-', ' ')));
    }

    /** Lower case, words parted by single spaces. By hand: a regular expression costs a start-up more than the tables. */
    private static String plain(String text) {
        var plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean parts = c == '-'
                    || c == '_'
                    || c == '\u2010'
                    || c == '\u2011'
                    || c == '\u2013'
                    || Character.isWhitespace(c)
                    || Character.isSpaceChar(c);
            if (!parts) {
                plain.append(Character.toLowerCase(c));
            } else if (!plain.isEmpty() && plain.charAt(plain.length() - 1) != ' ') {
                plain.append(' ');
            }
        }
        return plain.toString().strip();
    }

    private static Species nearest(String plain) {
        var best = Species.PHEASANT;
        int fewest = Integer.MAX_VALUE;
        // A cell of a whole page would cost seconds and its tail can't make it nearer to any word.
        var typed = plain.substring(0, Math.min(plain.length(), 60));
        for (var word : BY_WORD.entrySet()) {
            int changes = Letters.changed(typed, word.getKey());
            if (changes < fewest) {
                fewest = changes;
                best = word.getValue();
            }
        }
        return best;
    }

    private static Map<String, Species> words() {
        var words = new LinkedHashMap<String, Species>();
        for (var species : Species.values()) {
            words.put(plain(species.word()), species);
        }
        for (var species : Species.values()) {
            words.put(plain(species.scientificName()), species);
            for (var synonym : synonyms(species).split(",", -1)) {
                words.put(synonym, species);
            }
        }
        return java.util.Collections.unmodifiableMap(words);
    }

    private static String synonyms(Species species) {
        return switch (species) {
            case PHEASANT -> "ring necked pheasant,ringneck pheasant,ringneck,common pheasant,game pheasant";
            case BOBWHITE -> "bobwhite quail,northern bobwhite,bob white,bob white quail,northern bobwhite quail";
            case CHUKAR -> "chukar partridge,chukkar,chuckar";
            case RED_LEGGED_PARTRIDGE -> "red leg,redleg,red leg partridge,redlegged partridge,french partridge";
            case GREY_PARTRIDGE -> "gray partridge,hungarian partridge,english partridge,hun";
            case COTURNIX -> "coturnix quail,japanese quail,pharaoh quail";
            case TURKEY -> "wild turkey,domestic turkey,bronze turkey";
            case GUINEA_FOWL -> "guineafowl,guinea,guinea hen,helmeted guinea fowl,helmeted guineafowl";
            case MALLARD -> "mallard duck,wild duck";
            case PEAFOWL -> "peacock,indian peafowl,blue peafowl,india blue peafowl";
            case CHICKEN -> "hen,fowl,domestic fowl,domestic chicken";
        };
    }
}
