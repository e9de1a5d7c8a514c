package eggwright.trade.source;

import java.util.function.Function;

/** A value that never travels without where it comes from. */
public record Sourced<T>(T value, Source source) {
    /** The same source, with the value seen another way. */
    public <R> Sourced<R> map(Function<? super T, ? extends R> change) {
        return new Sourced<>(change.apply(value), source);
    }
}
