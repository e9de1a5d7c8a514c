package eggwright.desk.note;

import eggwright.desk.part.NoticeShown;
import java.util.List;

/**
 * What was kept, and what it brought up.
 *
 * @param lines what was typed, field by field
 * @param doubts what does not add up, in words
 * @param next where to go on
 */
public record KeptPage(
        String title,
        NoticeShown notice,
        List<Line> lines,
        List<String> doubts,
        String mendPath,
        List<NoticeShown.Next> next) {
    public KeptPage {
        lines = List.copyOf(lines);
        doubts = List.copyOf(doubts);
        next = List.copyOf(next);
    }

    /** One field as it was kept. */
    public record Line(String label, String value) {}
}
