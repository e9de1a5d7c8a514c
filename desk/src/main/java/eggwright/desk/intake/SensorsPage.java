package eggwright.desk.intake;

import eggwright.desk.form.Form;
import eggwright.desk.part.NoticeShown;
import java.util.List;
import java.util.Optional;

/**
 * All ways by which readings come in, and how it stands with each.
 *
 * @param form to add a sensor; empty for whoever may not
 * @param revoked sensors whose token was revoked, a line each
 * @param strangers what came under tokens that nobody has; empty where nothing did
 * @param broker sentences; empty where none is listened to
 * @param folder empty where none is watched
 * @param canBring whether this visitor may bring a file
 */
public record SensorsPage(
        Optional<NoticeShown> notice,
        List<Row> sensors,
        List<String> revoked,
        String strangers,
        List<String> broker,
        Optional<FolderShown> folder,
        Optional<Form> form,
        Bring canBring) {
    public SensorsPage {
        sensors = List.copyOf(sensors);
        revoked = List.copyOf(revoked);
        broker = List.copyOf(broker);
    }

    /** Whether a file can be brought. */
    public enum Bring {
        MAY,
        MAY_NOT
    }

    /**
     * One sensor.
     *
     * @param what it measures, and where
     * @param last what it read last, and when
     * @param doubt why that is not believed; empty where it is
     * @param since what came of its messages since the desk was opened
     * @param refused why the last message that was refused was; empty where none was
     * @param revokePath empty for whoever may not
     */
    public record Row(
            String name, String what, String last, String doubt, String since, String refused, String revokePath) {}

    /**
     * The watched folder.
     *
     * @param said where it is and when it was looked at
     * @param trouble why it could not be; empty where it could
     * @param waiting files of which nothing was taken, the first of them
     * @param moreWaiting how many wait beside those; empty where none does
     * @param takenTitle how many other files there are
     * @param taken a line for each of these, the first of them
     * @param moreTaken how many there are beside those; empty where there is none
     */
    public record FolderShown(
            String said,
            String trouble,
            List<Waiting> waiting,
            String moreWaiting,
            String takenTitle,
            List<String> taken,
            String moreTaken) {
        public FolderShown {
            waiting = List.copyOf(waiting);
            taken = List.copyOf(taken);
        }
    }

    /**
     * A file that waits.
     *
     * @param reasons sentences
     * @param canBeLookedAt whether a person's word would help
     */
    public record Waiting(String name, List<String> reasons, Help canBeLookedAt) {
        public Waiting {
            reasons = List.copyOf(reasons);
        }
    }

    /** Whether a file can be opened on a page and its columns said. */
    public enum Help {
        LOOK,
        NONE
    }
}
