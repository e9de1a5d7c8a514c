package eggwright.desk.note;

/** Groups of forms, in the order of the farm's week. */
enum Shelf {
    EGGS,
    SETTING,
    LAMP,
    HATCH,
    PENS,
    MACHINES,
    CHICKS,
    FARM
}
