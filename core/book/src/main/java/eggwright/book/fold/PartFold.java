package eggwright.book.fold;

/** Folds one part of the picture, entry by entry in order, so that one that comes last needs no more than itself. */
interface PartFold<T> {
    void take(Effective entry);

    /** What the entries taken so far add up to; changes no more when further ones are taken. */
    Folded<T> folded();
}
