package groupwright.documents.pages;

import groupwright.documents.content.Inline;
import groupwright.documents.content.Verdict;
import groupwright.documents.trace.Use;
import java.util.List;

/** A part of a line. Lines break only at spaces. */
sealed interface Piece {
    double width();

    /** Glyphs without a place to break. */
    record Word(Run run) implements Piece {
        @Override
        public double width() {
            return run.width();
        }
    }

    /** A space at which a line may break. */
    record Space(Run run) implements Piece {
        @Override
        public double width() {
            return run.width();
        }
    }

    /** The line ends here. */
    record Break() implements Piece {
        @Override
        public double width() {
            return 0;
        }
    }

    /** Text that leads to an anchor of the document. */
    record Linked(List<Run> runs, String anchor) implements Piece {
        @Override
        public double width() {
            return Piece.width(runs);
        }
    }

    /**
     * A computed number with its mark; never broken.
     *
     * @param value its glyphs; none where a drawing shows the number and only the mark stands here
     */
    record Number(List<Run> value, Run mark, Use use, Line line) implements Piece {
        static final double GAP = 1.4;

        /** What stands below the number. */
        enum Line {
            DIMENSION,
            NONE
        }

        @Override
        public double width() {
            return valueWidth() + hang();
        }

        double valueWidth() {
            return Piece.width(value);
        }

        /** Size of its glyphs. */
        double size() {
            return value.isEmpty() ? mark.style().size() : value.get(0).style().size();
        }

        /** What stands outside the column of digits. */
        double hang() {
            return GAP + mark.width();
        }
    }

    /** A verdict's mark; its word follows. */
    record Mark(Verdict verdict, double size) implements Piece {
        @Override
        public double width() {
            return size * 1.35;
        }
    }

    /** Empty room, so that words under a mark line up. */
    record Room(double width) implements Piece {}

    /** A criterion bar. */
    record Bar(Inline.Bar bar) implements Piece {
        @Override
        public double width() {
            return 48;
        }
    }

    private static double width(List<Run> runs) {
        double sum = 0;
        for (Run run : runs) {
            sum += run.width();
        }
        return sum;
    }
}
