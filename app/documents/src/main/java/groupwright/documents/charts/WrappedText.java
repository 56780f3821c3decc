package groupwright.documents.charts;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines by words. */
final class WrappedText {
    private WrappedText() {}

    /** Lines no wider than the room; a word that is wider is broken where it must. None for a blank text. */
    static List<String> lines(String text, Lettered style, TextWidths widths, double room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String part : text.strip().split(" +")) {
            String word = part;
            if (line.length() > 0 && style.width(line + " " + word, widths) > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (line.length() == 0 && word.length() > 1 && style.width(word, widths) > room) {
                int end = fitting(word, style, widths, room);
                lines.add(word.substring(0, end));
                word = word.substring(end);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        if (!line.toString().isBlank()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** How much of a word fits, at least one sign. */
    private static int fitting(String word, Lettered style, TextWidths widths, double room) {
        int end = 1;
        while (end < word.length() && style.width(word.substring(0, end + 1), widths) <= room) {
            end++;
        }
        return Character.isHighSurrogate(word.charAt(end - 1)) ? end + 1 : end;
    }
}
