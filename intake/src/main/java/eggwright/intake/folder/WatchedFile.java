package eggwright.intake.folder;

import eggwright.intake.file.TakenFile;
import java.time.Instant;

/**
 * A file of a watched folder.
 *
 * @param name under the folder, with slashes
 */
public record WatchedFile(String name, State state) {
    /** What became of it. */
    public sealed interface State {
        /** It still grows, or came just now. */
        record Growing() implements State {}

        /** All of it was taken. */
        record Taken(Instant at, TakenFile.Kept what) implements State {}

        /** It was taken before the desk was opened, and has not changed since. */
        record TakenBefore() implements State {}

        /** Nothing of it was taken. It lies where it was, and is asked again when anything changes. */
        record NotTaken(Instant at, Why why) implements State {}
    }

    /** Why a file was not taken. */
    public sealed interface Why {
        /** Its columns were never confirmed by a person. */
        record NotConfirmed() implements Why {}

        /** Neither the file nor a sub-folder names a machine. */
        record NoMachine() implements Why {}

        /**
         * Its sub-folder is called like no machine of the farm.
         *
         * @param near a machine that may be meant; empty where none is near
         */
        record UnknownMachine(String folder, String near) implements Why {}

        /** It lies below a sub-folder of a sub-folder. */
        record TooDeep() implements Why {}

        /** It, or the sub-folder of this name, did not let itself be read: by its rights, or by a fault of the disk. */
        record Unreadable() implements Why {}

        /** It cannot be read as it stands. */
        record Problems(TakenFile.Refused refused) implements Why {}

        /** The machine or the disk did not give it, or the book could not be written. */
        record Broke(String how) implements Why {}
    }
}
