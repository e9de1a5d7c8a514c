package eggwright.book.entry;

/** Whether a machine can be planned on. */
public enum MachineUse {
    IN_USE,
    OUT_OF_USE
}
