package groupwright.documents.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Breaks pieces into lines at spaces; a word wider than the column is cut between signs. */
final class LineBreaker {
    private final Typesetter typesetter;

    LineBreaker(Typesetter typesetter) {
        this.typesetter = typesetter;
    }

    /** Lines no wider than {@code width}, except for a single piece that cannot be cut; at least one line. */
    List<Line> lines(List<Piece> pieces, double width) {
        List<Line> lines = new ArrayList<>();
        List<Piece> line = new ArrayList<>();
        double used = 0;
        double spaces = 0;
        for (List<Piece> cluster : clusters(pieces, width)) {
            Piece first = cluster.get(0);
            if (first instanceof Piece.Break) {
                lines.add(ended(line));
                used = spaces = 0;
            } else if (first instanceof Piece.Space) {
                spaces += line.isEmpty() ? 0 : first.width();
                line.addAll(line.isEmpty() ? List.of() : cluster);
            } else {
                double wide = width(cluster);
                if (used + spaces + wide > width + 0.01 && !line.isEmpty()) {
                    lines.add(ended(line));
                    used = spaces = 0;
                }
                line.addAll(cluster);
                used += spaces + wide;
                spaces = 0;
            }
        }
        lines.add(ended(line));
        return lines;
    }

    private static double width(List<Piece> cluster) {
        double sum = 0;
        for (Piece piece : cluster) {
            sum += piece.width();
        }
        return sum;
    }

    /** Width of the widest thing that does not break. */
    static double narrowest(List<Piece> pieces) {
        double widest = 0;
        double current = 0;
        for (Piece piece : pieces) {
            current = piece instanceof Piece.Space || piece instanceof Piece.Break ? 0 : current + piece.width();
            widest = Math.max(widest, current);
        }
        return widest;
    }

    private static Line ended(List<Piece> line) {
        while (!line.isEmpty() && line.get(line.size() - 1) instanceof Piece.Space) {
            line.remove(line.size() - 1);
        }
        Line ended = new Line(joined(line));
        line.clear();
        return ended;
    }

    /** Words and spaces of one style become one run: smaller files, and text that copies well. */
    private static List<Piece> joined(List<Piece> line) {
        List<Piece> joined = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        double width = 0;
        for (int i = 0; i < line.size(); i++) {
            Optional<Run> run = plain(line.get(i));
            if (run.isEmpty()) {
                joined.add(line.get(i));
                continue;
            }
            text.append(run.get().text());
            width += run.get().width();
            Style style = run.get().style();
            boolean goesOn = i + 1 < line.size()
                    && plain(line.get(i + 1))
                            .filter(next -> next.style().equals(style))
                            .isPresent();
            if (!goesOn) {
                joined.add(new Piece.Word(new Run(text.toString(), style, width)));
                text.setLength(0);
                width = 0;
            }
        }
        return joined;
    }

    private static Optional<Run> plain(Piece piece) {
        if (piece instanceof Piece.Word word) {
            return Optional.of(word.run());
        }
        return piece instanceof Piece.Space space ? Optional.of(space.run()) : Optional.empty();
    }

    private List<List<Piece>> clusters(List<Piece> pieces, double width) {
        List<List<Piece>> clusters = new ArrayList<>();
        List<Piece> current = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Space || piece instanceof Piece.Break) {
                addCluster(clusters, current, width);
                clusters.add(List.of(piece));
                current = new ArrayList<>();
            } else {
                current.add(piece);
            }
        }
        addCluster(clusters, current, width);
        return clusters;
    }

    private void addCluster(List<List<Piece>> clusters, List<Piece> cluster, double width) {
        if (cluster.isEmpty()) {
            return;
        }
        if (width(cluster) <= width) {
            clusters.add(cluster);
            return;
        }
        for (Piece piece : cluster) {
            if (piece instanceof Piece.Word word && word.width() > width) {
                cut(word.run(), width).forEach(part -> clusters.add(List.of(part)));
            } else {
                clusters.add(List.of(piece));
            }
        }
    }

    private List<Piece> cut(Run run, double width) {
        List<Piece> parts = new ArrayList<>();
        int start = 0;
        double used = 0;
        for (int i = 0;
                i < run.text().length();
                i += Character.charCount(run.text().codePointAt(i))) {
            double advance = typesetter.advance(run.text().codePointAt(i), run.style())
                    * run.style().size()
                    / 1000;
            if (used + advance > width && i > start) {
                parts.add(new Piece.Word(typesetter.run(run.text().substring(start, i), run.style())));
                start = i;
                used = 0;
            }
            used += advance;
        }
        parts.add(new Piece.Word(typesetter.run(run.text().substring(start), run.style())));
        return parts;
    }
}
