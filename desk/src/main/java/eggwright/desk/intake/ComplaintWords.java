package eggwright.desk.intake;

import eggwright.desk.words.Words;
import eggwright.intake.message.Complaint;

/** Why a message was not taken, in words. */
final class ComplaintWords {
    private final Words words;

    ComplaintWords(Words words) {
        this.words = words;
    }

    String title() {
        return words.say("complaint.title");
    }

    /** What happened, and that nothing was kept. */
    String happened(Complaint why) {
        return brief(why) + " " + words.say("complaint.kept");
    }

    /** What to do. */
    String next(Complaint why) {
        return words.say("complaint." + why.kind() + ".next", why.about().toArray());
    }

    /** For a list: what happened alone. */
    String brief(Complaint why) {
        return words.say(key(why), why.about().toArray());
    }

    private static String key(Complaint why) {
        boolean isNowhere = why.kind() == Complaint.Kind.NOT_JSON && why.about().isEmpty();
        return "complaint." + why.kind() + (isNowhere ? ".nowhere" : "");
    }
}
