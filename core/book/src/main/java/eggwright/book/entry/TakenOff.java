package eggwright.book.entry;

/** Hatched chicks were removed. Counted at the grain that the scope names, and never split below it. */
public record TakenOff(Scope counted, Pull pull, int saleable, int culled, int deadInBasket, int pippedAliveLeft)
        implements Payload {
    public TakenOff {
        Checks.count("Saleable", saleable);
        Checks.count("Culled", culled);
        Checks.count("Dead in the basket", deadInBasket);
        Checks.count("Pipped alive and left", pippedAliveLeft);
    }
}
