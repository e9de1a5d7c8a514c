package eggwright.forecast.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class KernelTest {
    @Test
    void kernel_keepsWhatItSpreads_awayFromTheEnds() {
        var point = new double[Grid.POINTS];
        point[40] = 1;
        for (double sd : List.of(0.0, 0.02, 0.1, 0.4)) {
            var spread = Kernel.of(sd).spread(point);
            double total = 0;
            double squares = 0;
            for (int i = 0; i < Grid.POINTS; i++) {
                total += spread[i];
                squares += spread[i] * Math.pow(Grid.at(i), 2);
            }
            assertEquals(1, total, 1e-12);
            assertTrue(Math.abs(Math.sqrt(squares) - sd) < Grid.STEP / 2, sd + " became " + Math.sqrt(squares));
        }
    }
}
