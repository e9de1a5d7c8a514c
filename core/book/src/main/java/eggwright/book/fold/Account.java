package eggwright.book.fold;

/** In which account eggs have to find room. */
enum Account {
    /** What became of every egg, break-outs taken in. */
    FATES,
    /** That one, and what was counted before any egg was opened. */
    BOTH
}
