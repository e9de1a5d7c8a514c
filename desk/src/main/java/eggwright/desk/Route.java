package eggwright.desk;

/** Answers one visit. What it throws is a fault: it is logged, and the visitor gets its note. */
@FunctionalInterface
public interface Route {
    Answer answer(Visit visit);
}
