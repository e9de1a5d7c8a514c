package eggwright.desk;

/** What a browser keeps of its having come in. {@code __Host-} holds a cookie to this very name, over https. */
public enum Pass {
    /** A device that joined. */
    DEVICE("__Host-device", 34_560_000),
    /** The owner, signed in; forgotten when the browser is closed. */
    OWNER("__Host-owner", -1);

    private final String cookie;
    private final int seconds;

    Pass(String cookie, int seconds) {
        this.cookie = cookie;
        this.seconds = seconds;
    }

    String cookie() {
        return cookie;
    }

    /** The header that lets a browser keep a token. */
    String keeping(String token) {
        return cookie + "=" + token + "; Path=/; " + (seconds < 0 ? "" : "Max-Age=" + seconds + "; ")
                + "Secure; HttpOnly; SameSite=Strict";
    }

    /** The header that lets a browser forget it. */
    String forgetting() {
        return cookie + "=; Path=/; Max-Age=0; Secure; HttpOnly; SameSite=Strict";
    }
}
