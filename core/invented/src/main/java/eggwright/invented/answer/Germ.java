package eggwright.invented.answer;

/** Whether an egg could have become a chick. */
public enum Germ {
    FERTILE,
    INFERTILE
}
