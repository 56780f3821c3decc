package groupwright.documents.pages;

import java.util.ArrayList;
import java.util.List;

/**
 * The words of a table cell by their widths, for trying how many lines they take.
 *
 * @param words widths; below 0 where a line ends for sure
 * @param spaces before each word
 * @param indent room that a mark at the start takes from every line
 */
record CellWords(List<Double> words, List<Double> spaces, double indent) {
    private static final double BREAK = -1;

    static CellWords of(List<Piece> cell) {
        List<Double> words = new ArrayList<>();
        List<Double> spaces = new ArrayList<>();
        double indent = 0;
        double space = 0;
        boolean inWord = false;
        for (Piece piece : cell) {
            if (piece instanceof Piece.Mark mark && piece == cell.get(0)) {
                indent = mark.width();
            } else if (piece instanceof Piece.Space) {
                space = inWord ? piece.width() : space + piece.width();
                inWord = false;
            } else if (piece instanceof Piece.Break) {
                words.add(BREAK);
                spaces.add(0.0);
                inWord = false;
                space = 0;
            } else if (inWord) {
                words.set(words.size() - 1, words.get(words.size() - 1) + piece.width());
            } else {
                words.add(piece.width());
                spaces.add(space);
                inWord = true;
                space = 0;
            }
        }
        return new CellWords(words, spaces, indent);
    }

    /** Lines in a room; a word wider than it takes as many as it must be cut into. Cost grows with the words. */
    int lines(double width) {
        double room = Math.max(1, width - indent) + 0.01;
        int lines = 1;
        double used = 0;
        for (int i = 0; i < words.size(); i++) {
            double word = words.get(i);
            if (word == BREAK) {
                lines++;
                used = 0;
            } else if (used > 0 && used + spaces.get(i) + word > room) {
                lines++;
                used = word;
            } else {
                used += (used > 0 ? spaces.get(i) : 0) + word;
            }
            if (used > room) {
                lines += (int) Math.ceil(used / room) - 1;
                used = room;
            }
        }
        return lines;
    }
}
