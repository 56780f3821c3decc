package groupwright.workbench.riders;

import groupwright.workbench.components.Mark;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.notation.Typed;
import groupwright.workbench.riders.RidersSheet.Cell;
import groupwright.workbench.riders.RidersSheet.Kind;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JPanel;

/** One value in a column: the value itself, its unit, what is derived from it or what stood here before, and what is wrong. */
final class ValueCell extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int NUMBER = 90;
    private static final int SIGN = 16;

    /** Takes a value that was typed. */
    interface Commit {
        void commit(ValueCell cell, Optional<?> value);
    }

    private final Kind kind;
    private final transient Commit commit;
    private final ValueField field;
    private final PaintedView<CellText> unit = text();
    private final PaintedView<CellText> behind = text();
    private final PaintedView<Mark> changed;
    private final PaintedView<Mark> refused;
    private final Prose sentence = new Prose("", Type.SECONDARY, Token.INK);
    private transient Cell cell;
    private transient boolean before;

    ValueCell(Kind kind, Cell cell, Locale locale, Commit commit) {
        super(null);
        this.kind = kind;
        this.commit = commit;
        this.cell = cell;
        setOpaque(false);
        field = new ValueField(kind, this::take, this::restore);
        changed = new PaintedView<>(new VerdictMark(locale), Mark.CHANGED);
        refused = new PaintedView<>(new VerdictMark(locale), Mark.MISSES);
        refused.setVisible(false);
        field.getAccessibleContext().setAccessibleName(cell.name());
        field.setName("riders." + cell.at());
        field.setText(cell.shown());
        sentence.setVisible(false);
        sentence.setName("riders.refusal." + cell.at());
        changed.setVisible(false);
        add(field);
        add(unit);
        add(behind);
        add(changed);
        add(refused);
        add(sentence);
        show(cell, "");
    }

    private static PaintedView<CellText> text() {
        return new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(""));
    }

    ValueField field() {
        return field;
    }

    Cell cell() {
        return cell;
    }

    /** What is wrong; empty where nothing is. */
    String refusal() {
        return sentence.isVisible() ? sentence.getText() : "";
    }

    /** Shows a value; what somebody is typing stays. */
    void show(Cell next, String was) {
        boolean typing = !field.getText().equals(cell.shown());
        boolean reached = next.notation().read(field.getText()) instanceof Typed.Value typed
                && typed.value().equals(next.value());
        cell = next;
        if (!typing || reached) {
            restore();
        }
        unit.show(new CellText(next.unit(), Weight.REGULAR, Token.MUTED, CellText.Line.NONE));
        before = !was.isEmpty();
        changed.setVisible(before);
        behind.show(CellText.muted(before ? was : next.behind()));
        field.setToolTipText(kind == Kind.TEXT && !next.shown().isEmpty() ? next.shown() : null);
        revalidate();
    }

    private void restore() {
        field.setText(cell.shown());
        field.setCaretPosition(0);
        say("");
    }

    /** What was typed is meant to hold. */
    void take() {
        if (field.getText().equals(cell.shown())) {
            say("");
            return;
        }
        Typed typed = cell.notation().read(field.getText());
        if (typed instanceof Typed.Refused refused) {
            say(refused.sentence());
        } else if (((Typed.Value) typed).value().equals(cell.value())) {
            restore();
        } else {
            say("");
            commit.commit(this, ((Typed.Value) typed).value());
        }
    }

    /** Says what is wrong; what was typed stays. */
    void say(String wrong) {
        boolean there = !wrong.isEmpty();
        if (there) {
            field.markWrong();
        } else {
            field.markRight();
        }
        if (sentence.isVisible() != there || !sentence.getText().equals(wrong)) {
            sentence.setText(wrong);
            sentence.setVisible(there);
            refused.setVisible(there);
            field.getAccessibleContext().setAccessibleDescription(wrong);
            revalidate();
            if (getParent() != null) {
                getParent().revalidate();
            }
        }
    }

    /** Where what stands behind the unit begins. */
    private int behindX(int width) {
        int wide = kind == Kind.NUMBER ? Math.min(Look.pixels(NUMBER), width) : width - Metric.STEP.px();
        int unitWide = Math.max(unit.getPreferredSize().width, Look.pixels(Metric.UNIT_COLUMN.units() - 12));
        return wide - field.inset() + Look.pixels(6) + unitWide + Metric.STEP.px();
    }

    private int behindWidth() {
        return behind.getPreferredSize().width + (before ? Look.pixels(SIGN) + Metric.HALF_STEP.px() : 0);
    }

    /** What stood here before is never left out; where it has no room it goes below. */
    private boolean goesBelow(int width) {
        return before && behindX(width) + behindWidth() > width;
    }

    private int lines(int width) {
        return field.getPreferredSize().height * (goesBelow(width) ? 2 : 1);
    }

    int heightAt(int width) {
        if (!sentence.isVisible()) {
            return lines(width);
        }
        sentence.setSize(Math.max(1, width - Metric.STEP.px() - Look.pixels(SIGN)), 1);
        return lines(width) + sentence.getPreferredSize().height + Metric.HALF_STEP.px();
    }

    @Override
    public void doLayout() {
        int line = field.getPreferredSize().height;
        int inset = field.inset();
        int width = getWidth();
        int wide = kind == Kind.NUMBER ? Math.min(Look.pixels(NUMBER), width) : width - Metric.STEP.px();
        field.setBounds(0, 0, wide, line);
        int unitX = wide - inset + Look.pixels(6);
        unit.setBounds(unitX, 0, Math.min(unit.getPreferredSize().width, Math.max(0, width - unitX)), line);
        boolean below = goesBelow(width);
        int x = below ? inset : behindX(width);
        boolean fits = below || x + behindWidth() <= width;
        behind.setBounds(x, below ? line : 0, fits ? behind.getPreferredSize().width : 0, line);
        changed.setBounds(x + behind.getWidth() + Metric.HALF_STEP.px(), below ? line : 0, Look.pixels(SIGN), line);
        int sign = Look.pixels(SIGN);
        refused.setBounds(0, lines(width), sign, sign);
        sentence.setBounds(
                sign,
                lines(width),
                Math.max(1, width - Metric.STEP.px() - sign),
                Math.max(0, getHeight() - lines(width)));
    }
}
