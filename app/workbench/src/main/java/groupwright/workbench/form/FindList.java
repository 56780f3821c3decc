package groupwright.workbench.form;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.notation.Found;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;

/** The list that opens under a field while somebody types; the keys stay in the field: up, down, Enter, Escape. */
final class FindList {
    private static final int MOST_SHOWN = 200; // more are found by typing more
    private static final int ROWS = 10;

    private final JTextField field;
    private final Function<String, List<Found>> find;
    private final Consumer<Found> chosen;
    private final DefaultListModel<Found> model = new DefaultListModel<>();
    private final JList<Found> list = new JList<>(model);
    private final JPopupMenu popup = new JPopupMenu();
    private boolean open;

    FindList(JTextField field, Function<String, List<Found>> find, Consumer<Found> chosen) {
        this.field = field;
        this.find = find;
        this.chosen = chosen;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setFocusable(false);
        list.setCellRenderer(new Line());
        list.addMouseListener(new java.awt.event.MouseAdapter() {
            @Override
            public void mouseReleased(java.awt.event.MouseEvent released) {
                choose();
            }
        });
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        popup.setFocusable(false);
        popup.setLayout(new BorderLayout());
        popup.add(scroll);
    }

    /** Shows what fits a text; closes where nothing does. */
    void search(String typed) {
        model.clear();
        find.apply(typed).stream().limit(MOST_SHOWN).forEach(model::addElement);
        if (model.isEmpty()) {
            close();
            return;
        }
        list.setSelectedIndex(0);
        list.setVisibleRowCount(Math.min(ROWS, model.getSize()));
        open = true;
        if (field.isShowing()) {
            popup.setPopupSize(new Dimension(
                    Math.max(field.getWidth(), Look.pixels(320)),
                    list.getPreferredScrollableViewportSize().height + Look.pixels(2)));
            popup.show(field, 0, field.getHeight());
        }
    }

    boolean isOpen() {
        return open;
    }

    /** One up or down. */
    void move(int by) {
        int next = Math.max(0, Math.min(model.getSize() - 1, list.getSelectedIndex() + by));
        list.setSelectedIndex(next);
        list.ensureIndexIsVisible(next);
    }

    Optional<Found> selected() {
        return open ? Optional.ofNullable(list.getSelectedValue()) : Optional.empty();
    }

    void choose() {
        Optional<Found> found = selected();
        close();
        found.ifPresent(chosen);
    }

    void close() {
        open = false;
        popup.setVisible(false);
    }

    /** Id muted, title, unit muted; what it is about as tooltip. */
    private static final class Line extends JPanel implements ListCellRenderer<Found> {
        private static final long serialVersionUID = 1L;

        private final JLabel behind = new JLabel();
        private final JLabel title = new JLabel();
        private final JLabel before = new JLabel();

        Line() {
            super(new BorderLayout(Look.pixels(8), 0));
            setBorder(BorderFactory.createEmptyBorder(
                    Metric.HALF_STEP.px(), Metric.STEP.px(), Metric.HALF_STEP.px(), Metric.STEP.px()));
            behind.setFont(Type.SECONDARY.font(Weight.REGULAR));
            before.setFont(Type.CAPTION.font(Weight.REGULAR));
            add(behind, BorderLayout.LINE_END);
            add(title, BorderLayout.CENTER);
            add(before, BorderLayout.LINE_START);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Found> list, Found found, int index, boolean selected, boolean focused) {
            boolean figure = !found.about().isEmpty();
            before.setText(figure ? "" : found.id());
            behind.setText(figure ? found.unit() : "");
            title.setText(found.title());
            behind.setForeground(Token.MUTED.colour());
            before.setForeground(Token.MUTED.colour());
            setBackground((selected ? Token.WASH : Token.RAISED).colour());
            setToolTipText(found.about());
            getAccessibleContext().setAccessibleName(found.id() + " " + found.title());
            return this;
        }
    }
}
