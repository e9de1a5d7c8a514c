package eggwright.planted.cycle.a;

import eggwright.planted.cycle.b.Right;

public record Left(Right other) {}
