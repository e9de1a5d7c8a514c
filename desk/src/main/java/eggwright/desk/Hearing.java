package eggwright.desk;

import java.util.Map;

/** Answers what sends a token and a message. */
public interface Hearing {
    /**
     * What such a thing is answered: JSON, with what HTTP wants beside it.
     *
     * @param status of HTTP
     * @param headers as {@code Retry-After}
     */
    record Heard(int status, String json, Map<String, String> headers) {
        public Heard {
            headers = Map.copyOf(headers);
        }
    }

    /** Bytes of the longest message that is read. */
    int longest();

    /** @param token as it was shown; whether it is good is asked here */
    Heard hear(String token, byte[] message);

    /** A message that is longer, of which nothing was read. */
    Heard tooLong(String token);
}
