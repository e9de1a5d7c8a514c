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
        return words.say("complaint." + why.kind(), why.about().toArray()) + " " + words.say("complaint.kept");
    }

    /** What to do. */
    String next(Complaint why) {
        return words.say("complaint." + why.kind() + ".next", why.about().toArray());
    }

    /** For a list: what happened alone. */
    String brief(Complaint why) {
        return words.say("complaint." + why.kind(), why.about().toArray());
    }
}
