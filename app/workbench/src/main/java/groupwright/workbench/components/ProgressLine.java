package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.GridBagLayout;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.JPanel;

/** Work under way: a sentence with a count, how much is done where that is known, and a button that stops it. */
public final class ProgressLine extends JPanel {
    /**
     * How far the work is.
     *
     * @param sentence for example {@code Finding cassettes: 2 410 of about 3 300 covered}
     * @param share done, from 0 to 1; nothing where the whole is not known
     * @param kept what stopping does
     */
    public record Value(String sentence, OptionalDouble share, String kept) {
        public Value {
            Objects.requireNonNull(sentence, "sentence");
            Objects.requireNonNull(kept, "kept");
            share.ifPresent(s -> {
                if (!(s >= 0 && s <= 1)) {
                    throw new IllegalArgumentException("a share lies between 0 and 1, was " + s);
                }
            });
        }

        /** Work whose stop keeps what was found. */
        public static Value of(String sentence, OptionalDouble share, Locale locale) {
            return new Value(
                    sentence, share, Words.of(ProgressLine.class, locale).text("progress.kept"));
        }
    }

    private final transient PaintedView<Value> lines;

    /**
     * A line.
     *
     * @param stopped asks the work to stop
     */
    public ProgressLine(Value value, Runnable stopped, Locale locale) {
        super(new BorderLayout(Metric.WIDE_GAP.px(), 0));
        setOpaque(false);
        lines = new PaintedView<>(new Lines(), value, AccessibleRole.PROGRESS_BAR);
        add(lines, BorderLayout.CENTER);
        JPanel middle = new JPanel(new GridBagLayout());
        middle.setOpaque(false);
        middle.setBorder(BorderFactory.createEmptyBorder());
        middle.add(ActionButton.plain(Words.of(ProgressLine.class, locale).text("progress.stop"), stopped));
        add(middle, BorderLayout.LINE_END);
    }

    /** Says how far the work is now. */
    public void show(Value value) {
        lines.show(value);
    }

    private static final class Lines implements Painter<Value> {
        private static final double LEAST_BAR = 240;
        private static final double SENTENCE_MIDDLE = 9;
        private static final double BAR_TOP = 22;
        private static final double BAR = 4;
        private static final double KEPT_MIDDLE = 39;
        private static final double HEIGHT = 48;

        @Override
        public Extent extent(Value value) {
            double width = Math.max(
                    Type.TABLE.width(value.sentence(), Weight.REGULAR),
                    Type.SECONDARY.width(value.kept(), Weight.REGULAR));
            return new Extent(Math.max(LEAST_BAR, width), HEIGHT, Type.TABLE.baseline(SENTENCE_MIDDLE));
        }

        @Override
        public void paint(Drawing drawing, Value value) {
            drawing.text(
                    value.sentence(), 0, Type.TABLE.baseline(SENTENCE_MIDDLE), Type.TABLE, Weight.REGULAR, Token.INK);
            value.share().ifPresent(share -> {
                drawing.box(0, BAR_TOP, drawing.width(), BAR, Token.HAIRLINE);
                if (share > 0) {
                    drawing.box(0, BAR_TOP, drawing.width() * share, BAR, Token.ACCENT);
                }
            });
            double keptMiddle = value.share().isPresent() ? KEPT_MIDDLE : KEPT_MIDDLE - BAR - Metric.HALF_STEP.units();
            drawing.text(
                    value.kept(), 0, Type.SECONDARY.baseline(keptMiddle), Type.SECONDARY, Weight.REGULAR, Token.MUTED);
        }

        @Override
        public String name(Value value) {
            return value.sentence();
        }
    }
}
