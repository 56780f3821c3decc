package groupwright.workbench.find;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Finds anything while one types. Arrow keys choose, Enter goes there, Escape goes back to where one was. */
public final class FindField extends JTextField {
    private static final int MOST = 40;
    private static final int MOST_ROWS = 12;
    private static final int WIDTH = 480;

    private final transient Words words;
    private final transient BiFunction<String, Integer, List<Found>> finding;
    private final transient Consumer<Found> go;
    private final DefaultListModel<Found> model = new DefaultListModel<>();
    private final JList<Found> list = new JList<>(model);
    private final JLabel none = new JLabel();
    private final JScrollPane scroll = new JScrollPane(list);
    private final JPopupMenu popup = new JPopupMenu();

    /**
     * @param finding answers what fits a query, best first, at most so many
     * @param go goes to what was chosen
     */
    public FindField(Locale locale, BiFunction<String, Integer, List<Found>> finding, Consumer<Found> go) {
        this.words = Words.of(FindField.class, locale);
        this.finding = finding;
        this.go = go;
        setName("find");
        putClientProperty("JTextField.placeholderText", words.text("placeholder"));
        putClientProperty("JTextField.showClearButton", true);
        getAccessibleContext().setAccessibleName(words.text("name"));
        getAccessibleContext().setAccessibleDescription(words.text("description"));
        build();
        key("DOWN", () -> move(1));
        key("UP", () -> move(-1));
        key("ENTER", () -> chosen().ifPresent(this::leave));
        key("ESCAPE", this::giveUp);
    }

    private void build() {
        list.setName("found");
        list.setCellRenderer(new FoundCell());
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setFocusable(false); // typing goes on in the field
        list.getAccessibleContext().setAccessibleName(words.text("found"));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseReleased(MouseEvent event) {
                chosen().ifPresent(FindField.this::leave);
            }
        });
        popup.setFocusable(false);
        popup.setLayout(new BorderLayout());
        popup.add(scroll);
        getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                refresh();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                refresh();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                refresh();
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    popup.setVisible(false);
                }
            }
        });
    }

    private void key(String stroke, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    private void refresh() {
        String query = getText();
        List<Found> found = finding.apply(query, MOST);
        model.clear();
        model.addAll(found);
        if (query.isBlank() || !isShowing()) {
            popup.setVisible(false);
            return;
        }
        none.setText(words.text("none", query.strip()));
        none.setBorder(BorderFactory.createEmptyBorder(
                Metric.STEP.px(), Metric.STEP.px(), Metric.STEP.px(), Metric.STEP.px()));
        popup.removeAll();
        popup.add(found.isEmpty() ? none : scroll);
        list.setSelectedIndex(0);
        int rows = Math.max(1, Math.min(MOST_ROWS, found.size()));
        list.setFixedCellHeight(Metric.ROW.px());
        list.setVisibleRowCount(rows);
        int width = Math.max(getWidth(), Look.pixels(WIDTH));
        popup.setPreferredSize(new Dimension(width, (found.isEmpty() ? 1 : rows) * Metric.ROW.px() + Metric.STEP.px()));
        popup.setVisible(false); // a popup that is open keeps its old size
        popup.show(this, 0, getHeight());
        requestFocusInWindow();
    }

    private void move(int by) {
        if (!model.isEmpty()) {
            int next = Math.floorMod(list.getSelectedIndex() + by, model.getSize());
            list.setSelectedIndex(next);
            list.ensureIndexIsVisible(next);
        }
    }

    private Optional<Found> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void leave(Found found) {
        setText("");
        popup.setVisible(false);
        go.accept(found);
    }

    private void giveUp() {
        setText("");
        popup.setVisible(false);
        transferFocus();
    }
}
