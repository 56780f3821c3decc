package groupwright.workbench.form;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.Found;
import java.awt.FlowLayout;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.text.DefaultEditorKit;

/**
 * Several records: each a chip with its id, and a field behind them that finds more. Backspace in the empty field, or Delete
 * on a chip, takes one out. Each change holds at once.
 */
final class ChipsEditor implements Editor {
    private static final String BETWEEN = ", ";

    private final JPanel panel = new JPanel(new WrapLayout());
    private final JTextField field = new JTextField(10);
    private final FindList list;
    private final Function<String, String> titles;
    private final Words words;
    private final List<String> ids = new ArrayList<>();
    private boolean quiet;
    private boolean locked;
    private Runnable typing = () -> {};
    private Runnable done = () -> {};

    ChipsEditor(Function<String, List<Found>> find, Function<String, String> titles, Words words) {
        this.titles = titles;
        this.words = words;
        this.list = new FindList(
                field,
                typed -> find.apply(typed).stream()
                        .filter(found -> !ids.contains(found.id()))
                        .toList(),
                found -> {
                    clearField();
                    ids.add(found.id());
                    changed();
                });
        panel.setOpaque(false);
        field.setPreferredSize(new java.awt.Dimension(Look.pixels(144), lineHeight()));
        TextKeys.bind(field, "DOWN", () -> moveOrOpen(1));
        TextKeys.bind(field, "UP", () -> moveOrOpen(-1));
        TextKeys.bind(field, "BACK_SPACE", this::backspace);
        build();
    }

    private static int lineHeight() {
        return Look.pixels(Metric.FIELD.units() + 4.0); // with the focus ring on both sides
    }

    private void moveOrOpen(int by) {
        if (list.isOpen()) {
            list.move(by);
        } else {
            list.search(field.getText());
        }
    }

    private void backspace() {
        if (field.getText().isEmpty() && !ids.isEmpty()) {
            remove(ids.get(ids.size() - 1));
        } else {
            field.getActionMap()
                    .get(DefaultEditorKit.deletePrevCharAction)
                    .actionPerformed(new ActionEvent(field, ActionEvent.ACTION_PERFORMED, ""));
        }
    }

    private void remove(String id) {
        ids.remove(id);
        changed();
        field.requestFocusInWindow();
    }

    private void changed() {
        build();
        typing.run();
        done.run();
    }

    private void clearField() {
        quiet = true;
        field.setText("");
        quiet = false;
        list.close();
    }

    private void build() {
        panel.removeAll();
        ids.forEach(id -> panel.add(chip(id)));
        if (!locked) {
            panel.add(field);
        }
        panel.revalidate();
        panel.repaint();
    }

    private JButton chip(String id) {
        JButton chip = new JButton(locked ? id : id + " ×");
        chip.putClientProperty("FlatLaf.style", "font: $medium.font");
        chip.setMargin(new java.awt.Insets(0, Metric.HALF_STEP.units(), 0, Metric.HALF_STEP.units()));
        chip.setPreferredSize(new java.awt.Dimension(chip.getPreferredSize().width, lineHeight()));
        chip.setToolTipText(titles.apply(id));
        chip.getAccessibleContext().setAccessibleName(words.text("chip.name", titles.apply(id)));
        if (!locked) {
            chip.addActionListener(pressed -> remove(id));
            TextKeys.bind(chip, "DELETE", () -> remove(id));
        }
        return chip;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent input() {
        return field;
    }

    @Override
    public String text() {
        String rest = field.getText().isBlank() ? "" : field.getText();
        List<String> all = new ArrayList<>(ids);
        if (!rest.isEmpty()) {
            all.add(rest);
        }
        return String.join(BETWEEN, all);
    }

    @Override
    public void show(String text) {
        List<String> next = text.isBlank() ? List.of() : List.of(text.split("\\s*,\\s*"));
        boolean same = ids.equals(next);
        ids.clear();
        ids.addAll(next);
        clearField();
        if (!same) {
            build();
        }
    }

    @Override
    public void lock() {
        locked = true;
        build();
    }

    @Override
    public void tell(Runnable whenTyping, Runnable whenDone) {
        typing = whenTyping;
        done = whenDone;
        TextKeys.typing(field, () -> {
            if (!quiet) {
                whenTyping.run();
                list.search(field.getText());
            }
        });
        TextKeys.done(field, () -> {
            if (list.isOpen() && field.isFocusOwner()) {
                list.choose();
            } else {
                list.close();
                whenDone.run();
            }
        });
    }

    /** A flow that knows its height at the width it has. */
    private static final class WrapLayout extends FlowLayout {
        private static final long serialVersionUID = 1L;

        WrapLayout() {
            super(FlowLayout.LEADING, 0, 0);
        }

        @Override
        public java.awt.Dimension preferredLayoutSize(java.awt.Container parts) {
            int width = parts.getWidth() > 0 ? parts.getWidth() : Look.pixels(400);
            int x = 0;
            int height = 0;
            int row = 0;
            for (java.awt.Component part : parts.getComponents()) {
                java.awt.Dimension size = part.getPreferredSize();
                if (x > 0 && x + size.width > width) {
                    height += row + getVgap();
                    x = 0;
                    row = 0;
                }
                x += size.width;
                row = Math.max(row, size.height);
            }
            return new java.awt.Dimension(width, height + row);
        }
    }
}
