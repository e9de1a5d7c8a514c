package eggwright.planted.cycle.b;

import eggwright.planted.cycle.a.Left;
import java.util.List;

public record Right(List<Left> others) {}
