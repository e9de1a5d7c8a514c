package eggwright.desk.door;

import java.util.Map;

/** The headers that every answer of the desk carries. */
public final class Headers {
    /**
     * Nothing from elsewhere, nothing inline. {@code same-origin} as the referrer policy, because under
     * {@code no-referrer} a browser sends its own forms with an Origin of null, and the door would refuse them.
     */
    public static final Map<String, String> ALWAYS = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self'; img-src 'self'; "
                    + "connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; "
                    + "base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            "Referrer-Policy",
            "same-origin",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Permissions-Policy",
            "accelerometer=(), camera=(), display-capture=(), geolocation=(), gyroscope=(), magnetometer=(), "
                    + "microphone=(), midi=(), payment=(), usb=(), screen-wake-lock=(self)",
            "Cache-Control",
            "private, no-cache");

    /** An asset's name holds its hash: under that name it never changes. */
    public static final String ASSET_CACHE = "public, max-age=31536000, immutable";

    /** On the network, for a year: a browser that was here by https comes by nothing else. */
    public static final String ONLY_HTTPS = "max-age=31536000";

    /**
     * For a page that has to be whole in itself, for a device that does not trust the desk yet: its one style sheet stands
     * in it, named by its hash.
     */
    public static String whole(String styleSha256) {
        return "default-src 'none'; style-src 'sha256-" + styleSha256
                + "'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    }

    private Headers() {}
}
