package eggwright.book.fold;

import eggwright.book.entry.SensorAt;
import eggwright.book.name.BasketName;
import eggwright.book.name.MachineName;
import eggwright.book.name.OrderNumber;
import eggwright.book.name.PenName;
import eggwright.book.name.SetName;
import eggwright.book.picture.ShelfKey;

/** A part of the picture that is folded on its own. An entry may touch several. */
sealed interface Part {
    record Farm() implements Part {}

    record Pen(PenName pen) implements Part {}

    record Shelf(ShelfKey key) implements Part {}

    record Machine(MachineName machine) implements Part {}

    /** One set; sets whose eggs were pooled are folded together. */
    record Set(SetName set) implements Part {}

    record Order(OrderNumber order) implements Part {}

    /** Counts of a basket into which nothing was transferred in the days before. */
    record UnknownBasket(BasketName basket) implements Part {}

    /** What was said of one sensor. */
    record Sensor(SensorAt sensor) implements Part {}

    Part FARM = new Farm();
}
