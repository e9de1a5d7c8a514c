package eggwright.trade;

/** From one value to another, both included; the two are equal where the source gives a single figure. */
public record Range<T>(T low, T high) {}
