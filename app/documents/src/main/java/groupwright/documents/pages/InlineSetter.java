package groupwright.documents.pages;

import groupwright.documents.tree.CriterionBar;
import groupwright.documents.tree.LiveNumber;
import groupwright.documents.tree.ShownPlaces;
import groupwright.documents.tree.TraceMark;
import groupwright.documents.tree.VerdictMark;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** Turns the children of a block into pieces. */
final class InlineSetter {
    private final Typesetter typesetter;
    private final UsePlaces places;

    InlineSetter(Typesetter typesetter, UsePlaces places) {
        this.typesetter = typesetter;
        this.places = places;
    }

    /** Page numbers of all places of some numbers, each leading to the first place on that page; a dash for none. */
    List<Piece> pages(List<Integer> entries, Style style, String separator) {
        List<Piece> pieces = new ArrayList<>();
        places.firstOnPages(entries).forEach((page, use) -> {
            if (!pieces.isEmpty()) {
                pieces.addAll(pieces(separator, style));
            }
            pieces.add(new Piece.Linked(typesetter.set(Integer.toString(page), style.in(Paper.ACCENT)), use.anchor()));
        });
        return pieces.isEmpty() ? pieces("—", style) : pieces;
    }

    /** Pieces of a block's children. */
    List<Piece> pieces(Node parent, Style style, Piece.Number.Line numberLine) {
        Walk walk = new Walk(style, numberLine);
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            child.accept(walk);
        }
        return walk.pieces;
    }

    /** Pieces of plain text. */
    List<Piece> pieces(String text, Style style) {
        List<Piece> pieces = new ArrayList<>();
        addText(pieces, text, style);
        return pieces;
    }

    private void addText(List<Piece> pieces, String text, Style style) {
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || isBreak(text, i)) {
                typesetter.set(text.substring(start, i), style, text).forEach(run -> pieces.add(new Piece.Word(run)));
                if (i < text.length()) {
                    pieces.add(new Piece.Space(typesetter.run(" ", style)));
                }
                start = i + 1;
            }
        }
    }

    /** A percent sign stays with its number. */
    private static boolean isBreak(String text, int index) {
        return text.charAt(index) == ' ' && !text.startsWith("%", index + 1);
    }

    private final class Walk extends AbstractVisitor {
        private final List<Piece> pieces = new ArrayList<>();
        private final Piece.Number.Line numberLine;
        private Style style;

        Walk(Style style, Piece.Number.Line numberLine) {
            this.style = style;
            this.numberLine = numberLine;
        }

        @Override
        public void visit(Text text) {
            addText(pieces, text.getLiteral(), style);
        }

        @Override
        public void visit(SoftLineBreak node) {
            pieces.add(new Piece.Space(typesetter.run(" ", style)));
        }

        @Override
        public void visit(HardLineBreak node) {
            pieces.add(new Piece.Break());
        }

        @Override
        public void visit(Code code) {
            addText(pieces, code.getLiteral(), style.in(Face.MONO).ofSize(style.size() * 0.92));
        }

        @Override
        public void visit(StrongEmphasis node) {
            within(style.strong(), node);
        }

        @Override
        public void visit(Emphasis node) {
            within(style.in(style.face().slanted()), node);
        }

        @Override
        public void visit(Link link) {
            visitChildren(link);
            boolean saysItself = link.getFirstChild() instanceof Text text
                    && text.getNext() == null
                    && text.getLiteral().equals(link.getDestination());
            if (!saysItself && !link.getDestination().startsWith("#")) { // paper cannot be clicked
                addText(pieces, " (" + link.getDestination() + ")", style.in(Paper.MUTED));
            }
        }

        @Override
        public void visit(CustomNode node) {
            if (node instanceof LiveNumber number) {
                add(number);
            } else if (node instanceof TraceMark mark) {
                Run raised = typesetter.run(Integer.toString(mark.use().entry()), style.raised());
                pieces.add(new Piece.Space(typesetter.run(" ", style)));
                pieces.add(new Piece.Number(List.of(), raised, mark.use(), Piece.Number.Line.NONE));
            } else if (node instanceof VerdictMark mark) {
                pieces.add(new Piece.Mark(mark.verdict(), style.size()));
                addText(pieces, mark.word(), style);
            } else if (node instanceof CriterionBar bar) {
                pieces.add(new Piece.Bar(bar.bar()));
            } else if (node instanceof ShownPlaces shown) {
                pieces.addAll(pages(shown.entries(), style, ", "));
            }
        }

        private void add(LiveNumber number) {
            boolean stands = numberLine == Piece.Number.Line.DIMENSION;
            Style valueStyle = (stands ? style.strong() : style).in(Style.Digits.TABULAR);
            Run mark = typesetter.run(Integer.toString(number.use().entry()), style.raised());
            List<Run> value = typesetter.set(number.shown().text(), valueStyle);
            pieces.add(new Piece.Number(value, mark, number.use(), numberLine));
        }

        private void within(Style inner, Node node) {
            Style outer = style;
            style = inner;
            visitChildren(node);
            style = outer;
        }
    }
}
