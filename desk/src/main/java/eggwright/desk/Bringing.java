package eggwright.desk;

import java.util.Optional;

/** Answers a form with a file in it. */
@FunctionalInterface
public interface Bringing {
    /** @param file empty where none was chosen */
    Answer answer(Visit visit, Optional<Brought> file);
}
