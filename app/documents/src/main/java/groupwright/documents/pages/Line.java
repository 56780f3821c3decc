package groupwright.documents.pages;

import groupwright.documents.trace.Use;
import java.util.List;
import java.util.Optional;

/** Pieces on one baseline. */
record Line(List<Piece> pieces) {
    Line {
        pieces = List.copyOf(pieces);
    }

    double width() {
        double sum = 0;
        for (Piece piece : pieces) {
            sum += piece.width();
        }
        return sum;
    }

    /** Width of the mark at the end, which stands outside a column of digits. */
    double hang() {
        return last().map(piece -> piece instanceof Piece.Number number ? number.hang() : 0.0)
                .orElse(0.0);
    }

    /** The numbers on this line. */
    List<Use> uses() {
        return pieces.stream()
                .filter(Piece.Number.class::isInstance)
                .map(piece -> ((Piece.Number) piece).use())
                .toList();
    }

    /** The bar, if that is all there is. */
    boolean isBar() {
        return pieces.size() == 1 && pieces.get(0) instanceof Piece.Bar;
    }

    private Optional<Piece> last() {
        return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(pieces.size() - 1));
    }
}
