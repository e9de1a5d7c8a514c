package eggwright.sheet.table;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever the bytes, the answer is a table or a refusal, never an exception. */
class RobustnessTest {
    private static final List<String> NAMES = List.of("a.csv", "a.xlsx", "a.tsv", "a", "");

    private static final String ROWS = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>eggs</t></is></c></row>"
            + "<row r=\"2\"><c r=\"A2\" t=\"s\"><f t=\"shared\" ref=\"A2:A3\" si=\"0\">1+1</f><v>2</v></c></row>"
            + "<row r=\"3\"><c r=\"AB3\" t=\"b\"><v>1</v></c><c r=\"AC3\"><v>5E7</v></c></row>";

    private static byte[] workbook() {
        return XlsxTest.workbook(sheet -> {
            for (int r = 0; r < 20; r++) {
                for (int c = 0; c < 8; c++) {
                    sheet.value(r, c, r == 0 ? "column " + c : "cell " + r * c);
                }
            }
            sheet.formula(5, 5, "A1&B1");
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyBytes_giveAnAnswer(long seed) {
        var random = new Random(seed);
        var book = workbook();
        var text = "set,tray,eggs\n1,\"two\nlines\",3\r\n4;5\t6\n".repeat(20).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 160; i++) {
            var bytes = switch (i % 4) {
                case 0 -> {
                    var noise = new byte[random.nextInt(400)];
                    random.nextBytes(noise);
                    yield noise;
                }
                case 1 -> damaged(book, random);
                case 2 ->
                    XlsxTest.byHand(
                            new String(damaged(ROWS.getBytes(StandardCharsets.UTF_8), random), StandardCharsets.UTF_8));
                default -> damaged(text, random);
            };
            for (var name : NAMES) {
                assertNotNull(TableReader.read(bytes, name));
            }
        }
    }

    private static byte[] damaged(byte[] whole, Random random) {
        var bytes = Arrays.copyOf(whole, random.nextInt(3) == 0 ? 1 + random.nextInt(whole.length) : whole.length);
        for (int n = random.nextInt(6); n > 0; n--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }
}
