package groupwright.documents.pages;

import java.util.Arrays;
import java.util.List;

/**
 * The words of a table cell by their widths, for trying how many lines they take.
 *
 * @param words widths; below 0 where a line ends for sure
 * @param spaces before each word
 * @param indent room that a mark at the start takes from every line
 */
record CellWords(double[] words, double[] spaces, double indent) {
    private static final double BREAK = -1;

    static CellWords of(List<Piece> cell) {
        double[] words = new double[cell.size()];
        double[] spaces = new double[cell.size()];
        int count = 0;
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
                words[count++] = BREAK;
                inWord = false;
                space = 0;
            } else if (inWord) {
                words[count - 1] += piece.width();
            } else {
                words[count] = piece.width();
                spaces[count++] = space;
                inWord = true;
                space = 0;
            }
        }
        return new CellWords(Arrays.copyOf(words, count), spaces, indent);
    }

    /** Lines in a room; a word wider than it takes as many as it must be cut into. Cost grows with the words. */
    int lines(double width) {
        double room = Math.max(1, width - indent) + 0.01;
        int lines = 1;
        double used = 0;
        for (int i = 0; i < words.length; i++) {
            double word = words[i];
            if (word == BREAK) {
                lines++;
                used = 0;
            } else if (used > 0 && used + spaces[i] + word > room) {
                lines++;
                used = word;
            } else {
                used += (used > 0 ? spaces[i] : 0) + word;
            }
            if (used > room) {
                lines += (int) Math.ceil(used / room) - 1;
                used = room;
            }
        }
        return lines;
    }
}
