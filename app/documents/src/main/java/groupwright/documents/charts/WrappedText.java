package groupwright.documents.charts;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines by words. */
final class WrappedText {
    private WrappedText() {}

    /** Lines no wider than the room, except where a single word is; none for a blank text. O(length). */
    static List<String> lines(String text, Lettered style, TextWidths widths, double room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split(" +")) {
            if (line.length() > 0 && style.width(line + " " + word, widths) > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        if (!line.toString().isBlank()) {
            lines.add(line.toString());
        }
        return lines;
    }
}
