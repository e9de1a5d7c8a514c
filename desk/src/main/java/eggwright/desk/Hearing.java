package eggwright.desk;

/** Answers what sends a token and a message. */
public interface Hearing {
    /** Bytes of the longest message that is read. */
    int longest();

    /** @param token as it was shown; whether it is good is asked here */
    Answer hear(String token, byte[] message);

    /** A message that is longer, of which nothing was read. */
    Answer tooLong(String token);
}
