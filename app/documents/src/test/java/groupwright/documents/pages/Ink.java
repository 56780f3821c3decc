package groupwright.documents.pages;

import java.awt.Color;
import java.awt.image.BufferedImage;

/** How dark a picture is, in squares of a few pixels: 0 is white, 1 is black. */
final class Ink {
    private static final int SQUARE = 8;

    private final double[][] squares;

    Ink(BufferedImage picture) {
        squares = new double[picture.getWidth() / SQUARE][picture.getHeight() / SQUARE];
        for (int x = 0; x < squares.length * SQUARE; x++) {
            for (int y = 0; y < squares[0].length * SQUARE; y++) {
                squares[x / SQUARE][y / SQUARE] += dark(new Color(picture.getRGB(x, y))) / (SQUARE * SQUARE);
            }
        }
    }

    private static double dark(Color colour) {
        return 1 - (colour.getRed() + colour.getGreen() + colour.getBlue()) / (3 * 255.0);
    }

    double total() {
        double total = 0;
        for (double[] column : squares) {
            for (double square : column) {
                total += square;
            }
        }
        return total;
    }

    double largestDifference(Ink other) {
        double largest = 0;
        for (int x = 0; x < squares.length; x++) {
            for (int y = 0; y < squares[0].length; y++) {
                largest = Math.max(largest, Math.abs(squares[x][y] - other.squares[x][y]));
            }
        }
        return largest;
    }
}
