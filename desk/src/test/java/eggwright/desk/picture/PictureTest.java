package eggwright.desk.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import eggwright.desk.Kept;
import eggwright.desk.picture.AccountBar.Part;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class PictureTest {
    private static final Numbers NONE = new Numbers(List.of("fate", "eggs"), List.of());

    static List<Picture> pictures() {
        return Samples.all();
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void picture_isDrawnAsKept(Picture picture) {
        Kept.same("picture/" + picture.id() + ".svg", picture.svg());
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void picture_isWellFormed_namedAndDescribed(Picture picture) throws Exception {
        var root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(picture.svg().getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();

        assertEquals("img", root.getAttribute("role"));
        assertEquals(picture.title(), root.getElementsByTagName("title").item(0).getTextContent());
        assertEquals(picture.says(), root.getElementsByTagName("desc").item(0).getTextContent());
        assertFalse(picture.numbers().rows().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void picture_carriesNoInlineStyle_soThatTheContentPolicyHolds(Picture picture) {
        assertFalse(Pattern.compile("\\s(style|on\\w+)=").matcher(picture.svg()).find());
    }

    @Test
    void account_fillsItsWholeLength_inTheOrderOfFates() {
        var widths = Pattern.compile("x=\"([\\d.]+)%\" y=\"22\" width=\"([\\d.]+)%\"")
                .matcher(Samples.account().svg())
                .results()
                .map(m -> new double[] {Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))})
                .toList();

        assertEquals(10, widths.size());
        assertEquals(100, widths.stream().mapToDouble(w -> w[1]).sum(), 0.05);
        assertEquals(100, widths.getLast()[0] + widths.getLast()[1], 0.02);
        assertEquals(100.0 * 31 / 324, widths.getFirst()[1], 0.005);
    }

    @Test
    void account_refusesParts_thatDoNotSumToTheEggsSet() {
        var clear = List.of(new Part("clear", 4, Ink.CLEAR));

        assertThrows(
                IllegalArgumentException.class,
                () -> new AccountBar("a", "t", "s", 5, 5, clear, Optional.empty(), "5 set", NONE));
        assertThrows(
                IllegalArgumentException.class,
                () -> new AccountBar("a", "t", "s", 4, 3, clear, Optional.empty(), "4 set", NONE));
    }

    @Test
    void account_isShorter_whenALargerSetSharesThePage() {
        var half = new AccountBar(
                "a", "t", "s", 4, 8, List.of(new Part("clear", 4, Ink.CLEAR)), Optional.empty(), "4 set", NONE);

        assertTrue(half.svg().contains("width=\"50%\" height=\"40\""), half.svg());
    }

    @Test
    void account_namesEveryFateThatHasEggs_inItsKey() {
        assertEquals(
                List.of("clear", "dead early", "dead in the middle", "dead late"),
                Samples.account().key().stream()
                        .limit(4)
                        .map(Picture.Key::label)
                        .toList());
        assertFalse(Samples.account().key().stream().anyMatch(k -> k.label().equals("still in")));
    }

    @Test
    void words_areEscaped() {
        var svg = new AccountBar(
                        "a",
                        "<b>&\"",
                        "s",
                        4,
                        4,
                        List.of(new Part("<clear>", 4, Ink.CLEAR)),
                        Optional.empty(),
                        "<4 set>",
                        NONE)
                .svg();

        assertTrue(svg.contains("&lt;b&gt;&amp;&quot;"), svg);
        assertTrue(svg.contains("&lt;4 set&gt;"), svg);
        assertFalse(svg.contains("<4"), svg);
    }

    @Test
    void intervals_stayOnTheirScale() {
        var scale = new IntervalPlot.Scale(40, 100);

        assertEquals(0, scale.at(37.6));
        assertEquals(50, scale.at(70));
        assertEquals(100, scale.at(100));
        assertThrows(IllegalArgumentException.class, () -> new IntervalPlot.Scale(60, 60));
    }

    @Test
    void scale_holdsAllPercents_inEvenSteps() {
        assertEquals(new IntervalPlot.Scale(60, 100), IntervalPlot.Scale.over(List.of(66.0, 91.5)));
        assertEquals(new IntervalPlot.Scale(80, 100), IntervalPlot.Scale.over(List.of(88.0, 100.0)));
        assertEquals(new IntervalPlot.Scale(0, 100), IntervalPlot.Scale.over(List.of(7.0, 91.5)));
        assertEquals(new IntervalPlot.Scale(0, 8), IntervalPlot.Scale.over(List.of(0.0, 7.2)));
        assertEquals(new IntervalPlot.Scale(0, 40), IntervalPlot.Scale.over(List.of(2.0, 21.0)));
    }

    @Test
    void interval_hasNoEnd_whereItGoesOffTheScale() {
        var row = new IntervalPlot.Row("9", "1 of 2", "", 50, 9, 91, IntervalPlot.Standing.TOO_FEW);
        var svg = new IntervalPlot("i", "t", "s", new IntervalPlot.Scale(40, 100), Optional.empty(), List.of(row), NONE)
                .svg();

        assertTrue(svg.contains("x1=\"85%\" y1=\"57\""), svg);
        assertFalse(svg.contains("x1=\"0%\" y1=\"57\""), svg);
    }

    @Test
    void forecast_refusesRanges_thatDoNotHoldOneAnother() {
        assertThrows(IllegalArgumentException.class, () -> new ForecastBand.Point(0, 5, 4, 6, 7, 8));
        assertThrows(IllegalArgumentException.class, () -> new ForecastBand.Point(0, 5, 5, Double.NaN, 7, 8));
        var one = List.of(new ForecastBand.Point(0, 1, 2, 3, 4, 5));
        assertThrows(
                IllegalArgumentException.class,
                () -> new ForecastBand("f", "t", "s", one, Optional.empty(), "", "", NONE));
    }

    @Test
    void numbers_refuseARow_ofAnotherWidth() {
        assertThrows(
                IllegalArgumentException.class, () -> new Numbers(List.of("fate", "eggs"), List.of(List.of("clear"))));
    }

    @Test
    void scaleOfReadings_holdsThem_inFewEvenSteps() {
        assertEquals(new ClimateChart.Scale(92, 102, 2, 0), ClimateChart.Scale.over(93.1, 100.2));
        assertEquals(new ClimateChart.Scale(99.4, 99.8, 0.1, 1), ClimateChart.Scale.over(99.4, 99.8));
        assertEquals(new ClimateChart.Scale(99.5, 99.6, 0.1, 1), ClimateChart.Scale.over(99.5, 99.5));
        assertThrows(IllegalArgumentException.class, () -> new ClimateChart.Scale(1, 1, 1, 0));
    }

    @Test
    void readings_areBroken_whereNothingWasRead_andNameTheirSilence() {
        var svg = Samples.readings().svg();

        assertEquals(2, Pattern.compile("<polyline").matcher(svg).results().count());
        assertTrue(svg.contains("<rect x=\"20%\" y=\"206\" width=\"40%\" height=\"6\" class=\"silent\"/>"), svg);
        assertTrue(Samples.readings().key().stream().anyMatch(k -> k.label().equals("nothing was read")));
    }
}
