package groupwright.definition.figure;

import groupwright.definition.record.Invalid;
import java.util.ArrayList;
import java.util.List;

/** Words with live figures among them, for example {@code {{gear-range lead}} range}. */
public record LiveText(List<Segment> segments) {
    public LiveText {
        segments = List.copyOf(segments);
    }

    /** A stretch of such a text. */
    public sealed interface Segment {}

    /** Words as they stand. */
    public record Plain(String text) implements Segment {}

    /** A figure in double braces. */
    public record Live(FigureText figure) implements Segment {}

    /**
     * Reads a text.
     *
     * @throws Invalid if braces are not closed or what stands in them is not in the figure grammar
     */
    public static LiveText parse(String text) {
        List<Segment> segments = new ArrayList<>();
        int from = 0;
        int open = text.indexOf("{{");
        while (open >= 0) {
            int close = text.indexOf("}}", open);
            if (close < 0) {
                throw new Invalid("", "{{ at character " + (open + 1) + " is not closed", "close it with }}");
            }
            if (open > from) {
                segments.add(new Plain(text.substring(from, open)));
            }
            segments.add(new Live(FigureText.parse(text.substring(open + 2, close))));
            from = close + 2;
            open = text.indexOf("{{", from);
        }
        if (from < text.length()) {
            segments.add(new Plain(text.substring(from)));
        }
        return new LiveText(segments);
    }

    /** The figures in it, in order. */
    public List<FigureText> figures() {
        List<FigureText> figures = new ArrayList<>();
        for (Segment segment : segments) {
            if (segment instanceof Live live) {
                figures.add(live.figure());
            }
        }
        return figures;
    }
}
