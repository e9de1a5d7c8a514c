package eggwright.desk.intake;

import eggwright.desk.Hearing;
import eggwright.desk.Problem;
import eggwright.desk.words.Words;
import eggwright.intake.message.Complaint;
import eggwright.intake.message.Delivery;
import eggwright.intake.message.Intake;
import java.util.Locale;
import java.util.Map;

/** Where sensors send their readings over HTTP, and what each is answered. The only thing that a token lets in. */
final class ReadingDoor implements Hearing {
    private static final String MINUTE = "60";
    private static final String SOON = "10";

    private final Intake intake;
    private final ComplaintWords complaints;

    ReadingDoor(Intake intake, Locale language) {
        this.intake = intake;
        this.complaints = new ComplaintWords(Words.beside(ReadingDoor.class, language));
    }

    @Override
    public int longest() {
        return Intake.LONGEST;
    }

    @Override
    public Heard hear(String token, byte[] message) {
        return answer(intake.take(token, message, Delivery.LIVE));
    }

    @Override
    public Heard tooLong(String token) {
        return answer(intake.tooLong(token));
    }

    private Heard answer(Intake.Outcome outcome) {
        return switch (outcome) {
            case Intake.Outcome.Kept kept ->
                new Heard(
                        200,
                        "{\"kept\":" + kept.taken().fresh() + ",\"known\":"
                                + kept.taken().before() + ",\"held_back\":" + heldBack(kept) + "}",
                        Map.of());
            case Intake.Outcome.Refused(var why) ->
                new Heard(
                        status(why.kind()),
                        Problem.json(complaints.title(), complaints.happened(why), complaints.next(why)),
                        headers(why.kind()));
        };
    }

    /** JSON's null where it could not be counted: the readings are kept all the same. */
    private static String heldBack(Intake.Outcome.Kept kept) {
        return kept.heldBack().isPresent() ? Long.toString(kept.heldBack().getAsLong()) : "null";
    }

    /** Of HTTP: RFC 9110; of tokens: RFC 6750, section 3.1; of too many: RFC 6585, section 4. */
    static int status(Complaint.Kind kind) {
        return switch (kind) {
            case EMPTY, NOT_A_NUMBER, NOT_JSON, UNKNOWN_MEMBER, NO_VALUE, NOT_A_TIME, NO_OFFSET, TIMES_NEEDED -> 400;
            case UNKNOWN_TOKEN, REVOKED_TOKEN -> 401;
            case TOO_LONG, TOO_MANY_READINGS -> 413;
            case OTHER_UNIT, STILL_TO_COME, CLOCK_NEVER_SET, RETAINED, REPEATED -> 422;
            case TOO_OFTEN -> 429;
            case NOT_SAVED -> 503;
        };
    }

    private static Map<String, String> headers(Complaint.Kind kind) {
        return switch (status(kind)) {
            case 401 -> Map.of("WWW-Authenticate", "Bearer realm=\"readings\", error=\"invalid_token\"");
            case 429 -> Map.of("Retry-After", SOON);
            case 503 -> Map.of("Retry-After", MINUTE);
            default -> Map.of();
        };
    }
}
