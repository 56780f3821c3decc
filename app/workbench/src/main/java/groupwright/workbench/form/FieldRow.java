package groupwright.workbench.form;

import groupwright.workbench.components.Mark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.notation.Notation;
import groupwright.workbench.notation.Typed;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** One field: label, editor, what stood there before the last step, and the sentence about what is wrong. */
final class FieldRow extends JPanel implements RowStack.Part {
    private static final long serialVersionUID = 1L;

    private static final int LABEL = 168;
    private static final int SHORT_FIELD = 144;
    private static final int LONG_FIELD = 720;
    private static final int RING = 2; // the focus ring stands outside the field

    /** What is said about a field. */
    record About(String label, String name, String unit, String help, RowStack.Room room) {}

    /** Takes a value that was typed and is meant to hold. */
    interface Commit {
        void commit(FieldRow row, Optional<?> value);
    }

    private final transient About about;
    private final transient Editor editor;
    private final transient Commit commit;
    private final transient Runnable restored;
    private final JLabel label;
    private final JLabel was = new StyledLabel("", Type.SECONDARY, Weight.REGULAR, Token.MUTED);
    private final Sentence sentence = new Sentence(Mark.MISSES);
    private transient Notation notation;
    private transient Optional<?> value = Optional.empty();
    private String shown = "";

    /**
     * @param restored runs when Escape has put the old text back
     */
    FieldRow(About about, Editor editor, Notation notation, Commit commit, Runnable restored) {
        super(null);
        this.about = about;
        this.editor = editor;
        this.notation = notation;
        this.commit = commit;
        this.restored = restored;
        this.label = new StyledLabel(about.label(), Type.SECONDARY, Weight.REGULAR, Token.MUTED);
        setOpaque(false);
        label.setToolTipText(about.help());
        label.setLabelFor(editor.input());
        was.setHorizontalTextPosition(javax.swing.SwingConstants.LEADING);
        was.setVisible(false);
        editor.input().setToolTipText(about.help());
        editor.input().getAccessibleContext().setAccessibleName(about.name());
        editor.input().putClientProperty("FlatLaf.style", "font: $medium.font");
        describe();
        editor.tell(this::typing, this::commit);
        TextKeys.bind(editor.input(), "ESCAPE", this::restore);
        add(label);
        add(editor.component());
        add(was);
        add(sentence);
    }

    private void describe() {
        String said = sentence.said();
        editor.input()
                .getAccessibleContext()
                .setAccessibleDescription(said.isEmpty() ? about.help() : said + " " + about.help());
    }

    String label() {
        return about.label();
    }

    /** The unit behind the number; may be empty. */
    String unit() {
        return about.unit();
    }

    Editor editor() {
        return editor;
    }

    /** What stands in the record. */
    Optional<?> value() {
        return value;
    }

    /** The sentence under the field; empty where nothing is wrong. */
    String sentence() {
        return sentence.said();
    }

    /** Whether what is typed is not what stands in the record. */
    boolean isTouched() {
        return !editor.text().equals(shown);
    }

    /** Shows the value of the record; what somebody is typing stays. */
    void show(Optional<?> now, Notation how) {
        boolean touched = isTouched();
        boolean reached = touched
                && how.read(editor.text()) instanceof Typed.Value typed
                && typed.value().equals(now);
        notation = how;
        value = now;
        shown = how.shown(now);
        if (!touched || reached) {
            editor.show(shown);
            say("");
        }
    }

    /** Shows what stood here before the last step; empty text for nothing. */
    void was(String text) {
        was.setText(text);
        was.setIcon(text.isEmpty() ? null : new MarkIcon(Mark.CHANGED));
        was.setVisible(!text.isEmpty());
    }

    /** Puts a text back that somebody was typing. */
    void resume(String typed) {
        editor.show(typed);
        typing();
    }

    void lock() {
        editor.lock();
    }

    private void typing() {
        Typed typed = notation.read(editor.text());
        say(isTouched() && typed instanceof Typed.Refused refused ? refused.sentence() : "");
    }

    /** What was typed is meant to hold. */
    void commit() {
        if (!isTouched()) {
            return;
        }
        Typed typed = notation.read(editor.text());
        if (typed instanceof Typed.Refused refused) {
            say(refused.sentence());
        } else if (((Typed.Value) typed).value().equals(value)) {
            restore();
        } else {
            commit.commit(this, ((Typed.Value) typed).value());
        }
    }

    /** Back to what the record holds. */
    void restore() {
        editor.show(shown);
        say("");
        restored.run();
    }

    /** Says what is wrong, or with an empty text that nothing is. */
    void say(String wrong) {
        if (!sentence.said().equals(wrong)) {
            sentence.say(wrong);
            describe();
            revalidate();
            repaint();
        }
    }

    @Override
    public RowStack.Room room() {
        return about.room();
    }

    private int editorWidth(int width) {
        int room = width - Look.pixels(LABEL) + Look.pixels(RING);
        return Math.max(1, Math.min(room, Look.pixels(about.room() == RowStack.Room.HALF ? SHORT_FIELD : LONG_FIELD)));
    }

    private int editorHeight(int width) {
        JComponent component = editor.component();
        component.setSize(editorWidth(width), Math.max(1, component.getHeight()));
        component.doLayout();
        if (editor.input() != component) {
            editor.input().setSize(editorWidth(width) - Look.pixels(16), Short.MAX_VALUE);
        }
        return Math.max(Metric.FIELD.px() + 2 * Look.pixels(RING), component.getPreferredSize().height);
    }

    @Override
    public int heightAt(int width) {
        int below = sentence.heightAt(width - Look.pixels(LABEL));
        return editorHeight(width) + (below == 0 ? 0 : below + Metric.STEP.px());
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Look.pixels(LABEL + SHORT_FIELD);
        return new Dimension(width, heightAt(width));
    }

    @Override
    public void doLayout() {
        int line = Metric.FIELD.px() + 2 * Look.pixels(RING);
        int left = Look.pixels(LABEL);
        int height = editorHeight(getWidth());
        int width = editorWidth(getWidth());
        label.setBounds(new Rectangle(left - Metric.STEP.px(), line));
        editor.component().setBounds(left - Look.pixels(RING), 0, width, height);
        int after = left + width + Metric.STEP.px();
        was.setBounds(after, 0, Math.max(0, getWidth() - after), line);
        int below = sentence.heightAt(getWidth() - left);
        sentence.setBounds(left, height + Metric.HALF_STEP.px() / 2, getWidth() - left, below);
    }

    /** The line of what is wrong stands inside the lower edge of the field. */
    @Override
    protected void paintChildren(Graphics graphics) {
        super.paintChildren(graphics);
        if (sentence.isVisible()) {
            Rectangle field = editor.component().getBounds();
            try (Drawing drawing = Drawing.on(graphics, field)) {
                drawing.box(RING, drawing.height() - RING - 2, drawing.width() - 2.0 * RING, 2, Token.MISSES);
            }
        }
    }
}
