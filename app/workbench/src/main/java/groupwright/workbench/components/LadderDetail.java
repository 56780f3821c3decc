package groupwright.workbench.components;

import groupwright.definition.assessment.Rung;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JPanel;

/** A ladder opened: four lines, the highest rung first, each with what was reached, and below them what comes next. */
public final class LadderDetail extends JPanel {
    /**
     * What it shows.
     *
     * @param reached for each rung, what was reached, when and by whom; rungs may be left out
     * @param next what to do next, in one sentence without the word for it; may be empty
     */
    public record Value(Ladder ladder, Map<Rung, String> reached, String next, Locale locale) {
        public Value {
            Objects.requireNonNull(ladder, "ladder");
            Objects.requireNonNull(next, "next");
            Objects.requireNonNull(locale, "locale");
            reached = Map.copyOf(reached);
        }
    }

    /** Shows a ladder. */
    public LadderDetail(Value value) {
        super(new BorderLayout());
        setOpaque(false);
        add(new PaintedView<>(new Lines(), value), BorderLayout.CENTER);
        if (!value.next().isEmpty()) {
            Prose next = new Prose(
                    Words.of(LadderDetail.class, value.locale()).text("ladder.next", value.next()),
                    Type.TABLE,
                    Token.INK);
            next.setBorder(BorderFactory.createEmptyBorder(Metric.GAP.px(), 0, 0, 0));
            add(next, BorderLayout.SOUTH);
        }
    }

    /** Paints the four lines. */
    static final class Lines implements Painter<Value> {
        private static final double ROW = 28;
        private static final double RIGHT_UPRIGHT = 26;
        private static final double WORD_X = 36;
        private static final double GAP = 12;

        private static double wordWidth(Value value) {
            return Arrays.stream(Rung.values())
                    .mapToDouble(rung -> Type.TABLE.width(Ladder.word(rung, value.locale()), Weight.STRONG))
                    .max()
                    .orElseThrow();
        }

        @Override
        public Extent extent(Value value) {
            double reached = value.reached().values().stream()
                    .mapToDouble(text -> Type.SECONDARY.width(text, Weight.REGULAR))
                    .max()
                    .orElse(0);
            return new Extent(WORD_X + wordWidth(value) + GAP + reached, ROW * Rung.values().length, -1);
        }

        @Override
        public void paint(Drawing drawing, Value value) {
            drawing.upright(0, 0, ROW * Rung.values().length, 1, Token.EDGE);
            drawing.upright(RIGHT_UPRIGHT, 0, ROW * Rung.values().length, 1, Token.EDGE);
            double reachedX = WORD_X + wordWidth(value) + GAP;
            for (Rung rung : Rung.values()) {
                double top = (Rung.TESTED.ordinal() - rung.ordinal()) * ROW;
                double middle = top + ROW / 2;
                Ladder.Step step = value.ladder().at(rung);
                LadderMark.paintRung(drawing, step, 4, RIGHT_UPRIGHT - 3, middle - 1.25, 2.5);
                boolean open = step == Ladder.Step.OPEN;
                drawing.text(
                        Ladder.word(rung, value.locale()),
                        WORD_X,
                        Type.TABLE.baseline(middle),
                        Type.TABLE,
                        open ? Weight.REGULAR : Weight.STRONG,
                        open ? Token.MUTED : Token.INK);
                String reached = value.reached().getOrDefault(rung, "");
                drawing.text(
                        Type.SECONDARY.cut(reached, Weight.REGULAR, drawing.width() - reachedX),
                        reachedX,
                        Type.SECONDARY.baseline(middle),
                        Type.SECONDARY,
                        Weight.REGULAR,
                        Token.MUTED);
            }
        }

        @Override
        public String name(Value value) {
            return Arrays.stream(Rung.values())
                    .filter(rung -> value.reached().containsKey(rung))
                    .map(rung -> Ladder.word(rung, value.locale()) + ": "
                            + value.reached().get(rung))
                    .collect(Collectors.joining("; ", value.ladder().name() + ". ", ""));
        }
    }
}
