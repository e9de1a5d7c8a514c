package eggwright.desk.assets;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;

/**
 * The plain files under {@code assets/}, each read, hashed and packed once, when it is first asked for.
 *
 * <p>A file is served as {@code /assets/css/base.3f9c01a27b.css}: the name holds the first ten hex digits of the
 * SHA-256 of what is served, so it may be kept for ever and is new when its content is. {@code url("../font/…")} in a
 * style sheet and {@code from './…'} in a script are rewritten to such names.
 */
public final class Assets {
    /** Where assets live in the desk's addresses. */
    public static final String ROOT = "/assets/";

    private static final int HASH_DIGITS = 10;
    private static final Pattern NAME = Pattern.compile("[a-z]+/[A-Za-z0-9-]+\\.[a-z0-9]+");
    private static final Pattern HASHED_NAME = Pattern.compile("([a-z]+/[A-Za-z0-9-]+)\\.[0-9a-f]{10}(\\.[a-z0-9]+)");
    private static final Pattern IMPORT_IN_JS = Pattern.compile("(from\\s*)'(\\.{1,2})/([A-Za-z0-9/-]+\\.js)'");
    private static final Pattern HASHED_URL =
            Pattern.compile("[\"'(]/assets/([a-z]+/[A-Za-z0-9-]+)\\.[0-9a-f]{10}(\\.[a-z0-9]+)");
    private static final Pattern URL_IN_CSS = Pattern.compile("url\\(\"\\.\\./([^\"]+)\"\\)");
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "ico", "image/x-icon",
            "json", "application/json",
            "webmanifest", "application/manifest+json",
            "woff2", "font/woff2",
            "txt", "text/plain; charset=utf-8");

    private final Map<String, Named> known = new ConcurrentHashMap<>();

    private record Named(String url, Asset asset) {}

    /**
     * The address of a file, as {@code url("css/base.css")}.
     *
     * @throws IllegalArgumentException if there is no such file
     */
    public String url(String name) {
        return find(name)
                .orElseThrow(() -> new IllegalArgumentException("There is no asset " + name))
                .url();
    }

    /**
     * What stands in a file, for a page that has to be whole in itself.
     *
     * @throws IllegalArgumentException if there is no such file
     */
    public String text(String name) {
        return find(name)
                .map(named -> new String(named.asset().plain(), UTF_8))
                .orElseThrow(() -> new IllegalArgumentException("There is no asset " + name));
    }

    /** What is served under a name with its hash, as {@code css/base.3f9c01a27b.css}; empty where it is not there. */
    public Optional<Asset> served(String hashedName) {
        var match = HASHED_NAME.matcher(hashedName);
        if (!match.matches()) {
            return Optional.empty();
        }
        return find(match.group(1) + match.group(2))
                .filter(named -> named.url().equals(ROOT + hashedName))
                .map(Named::asset);
    }

    private Optional<Named> find(String name) {
        var have = known.get(name);
        if (have != null) {
            return Optional.of(have);
        }
        var read = read(name);
        read.ifPresent(named -> known.put(name, named));
        return read;
    }

    private Optional<Named> read(String name) {
        if (!NAME.matcher(name).matches()) {
            return Optional.empty();
        }
        try (var in = Assets.class.getResourceAsStream("/eggwright/desk/assets/" + name)) {
            if (in == null) {
                return Optional.empty();
            }
            var dot = name.lastIndexOf('.');
            var kind = name.substring(dot + 1);
            var bytes = switch (kind) {
                case "css" -> withHashedUrls(in.readAllBytes());
                case "js" -> withHashedImports(in.readAllBytes(), name.substring(0, name.indexOf('/') + 1));
                default -> in.readAllBytes();
            };
            var url = ROOT + name.substring(0, dot) + "." + hash(bytes) + "." + kind;
            var type = TYPES.getOrDefault(kind, "application/octet-stream");
            return Optional.of(new Named(url, new Asset(type, bytes, packed(bytes))));
        } catch (IOException e) {
            throw new UncheckedIOException("Asset " + name + " could not be read", e);
        }
    }

    private byte[] withHashedUrls(byte[] css) {
        return URL_IN_CSS
                .matcher(new String(css, UTF_8))
                .replaceAll(m -> Matcher.quoteReplacement("url(\"" + url(m.group(1)) + "\")"))
                .getBytes(UTF_8);
    }

    /** Modules import each other by their plain names; a browser has to ask for the hashed ones. */
    private byte[] withHashedImports(byte[] js, String folder) {
        return IMPORT_IN_JS
                .matcher(new String(js, UTF_8))
                .replaceAll(m -> Matcher.quoteReplacement(
                        m.group(1) + "'" + url(m.group(2).equals(".") ? folder + m.group(3) : m.group(3)) + "'"))
                .getBytes(UTF_8);
    }

    /** The addresses of a file and of all that it draws in after it, as a kept page needs them. */
    public List<String> withAllItNeeds(String name) {
        var found = new LinkedHashSet<String>();
        gather(name, found);
        return List.copyOf(found);
    }

    private void gather(String name, Set<String> found) {
        var asset = find(name).orElseThrow(() -> new IllegalArgumentException("There is no asset " + name));
        if (found.add(asset.url())) {
            var text = new String(asset.asset().plain(), UTF_8);
            HASHED_URL
                    .matcher(text)
                    .results()
                    .map(m -> m.group(1) + m.group(2))
                    .distinct()
                    .forEach(needed -> gather(needed, found));
        }
    }

    private static String hash(byte[] bytes) {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest).substring(0, HASH_DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    private static byte[] packed(byte[] bytes) throws IOException {
        var out = new ByteArrayOutputStream();
        try (var gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        }
        return out.size() < bytes.length * 0.95 ? out.toByteArray() : new byte[0];
    }
}
