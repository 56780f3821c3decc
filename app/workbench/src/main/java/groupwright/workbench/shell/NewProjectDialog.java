package groupwright.workbench.shell;

import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.StackLayout;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Asks what a new project is called, which currency it counts in, and where it lies. */
final class NewProjectDialog {
    private static final int WIDTH = 480;

    private final Words words;
    private final JDialog dialog;
    private final JTextField name = new JTextField();
    private final JTextField currency = new JTextField("EUR");
    private final JTextField folder = new JTextField();
    private final Prose wrong = new Prose(" ", Type.SECONDARY, Token.INK);
    private final Clock clock = Clock.systemDefaultZone();
    private Optional<Wanted> wanted = Optional.empty();
    private boolean folderTyped;

    /** What was asked for. */
    record Wanted(String name, String currency, Path folder, LocalDate date) {}

    NewProjectDialog(MainWindow window, Words words) {
        this.words = words;
        this.dialog = new JDialog(window, words.text("new.title"), true);
        dialog.setName("newProject");
        name.setName("new.name");
        currency.setName("new.currency");
        folder.setName("new.folder");
        JPanel panel = new JPanel(new StackLayout(Metric.HALF_STEP.px()));
        panel.setBorder(BorderFactory.createEmptyBorder(
                Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px(), Metric.WIDE_GAP.px()));
        panel.add(new Prose(words.text("new.head"), Type.HEADING, Weight.STRONG, Token.INK));
        field(panel, "new.name", name);
        field(panel, "new.currency", currency);
        field(panel, "new.folder", withButton());
        panel.add(wrong);
        panel.add(buttons());
        panel.setPreferredSize(new Dimension(Look.pixels(WIDTH), Look.pixels(344)));
        dialog.add(panel);
        dialog.pack();
        dialog.setLocationRelativeTo(window);
        name.getDocument().addDocumentListener(new Following());
    }

    private void field(JPanel panel, String key, JComponent field) {
        JLabel label = new JLabel(words.text(key));
        label.setFont(Type.CAPTION.font(Weight.STRONG));
        label.setForeground(Token.MUTED.colour());
        label.setBorder(BorderFactory.createEmptyBorder(Metric.STEP.px(), 0, 0, 0));
        label.setLabelFor(field);
        field.getAccessibleContext().setAccessibleName(words.text(key));
        panel.add(label);
        panel.add(field);
    }

    private JComponent withButton() {
        JPanel row = new JPanel(new BorderLayout(Metric.STEP.px(), 0));
        row.add(folder, BorderLayout.CENTER);
        row.add(
                ActionButton.plain(
                        words.text("new.choose"),
                        () -> Folders.choose(dialog, words.text("new.title"), words.text("new.place"))
                                .ifPresent(path -> {
                                    folderTyped = true;
                                    folder.setText(path.toString());
                                })),
                BorderLayout.LINE_END);
        return row;
    }

    private JComponent buttons() {
        JPanel row = new JPanel(new FlowLayout(FlowLayout.TRAILING, Metric.STEP.px(), 0));
        ActionButton create = ActionButton.main(words.text("new.create"), this::create);
        create.setName("new.create");
        row.add(ActionButton.plain(words.text("new.cancel"), dialog::dispose));
        row.add(create);
        dialog.getRootPane().setDefaultButton(create);
        return row;
    }

    /** The folder follows the name until one types a folder. */
    private final class Following implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            follow();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            follow();
        }

        @Override
        public void changedUpdate(DocumentEvent event) {
            follow();
        }

        private void follow() {
            if (!folderTyped) {
                String plain =
                        name.getText().strip().toLowerCase(words.locale()).replaceAll("[^\\p{L}\\p{Nd}]+", "-");
                folder.setText(Path.of(System.getProperty("user.home"), plain.isEmpty() ? "project" : plain)
                        .toString());
            }
        }
    }

    private void create() {
        Optional<String> problem = problem();
        if (problem.isPresent()) {
            wrong.setText(problem.get());
            return;
        }
        wanted = Optional.of(new Wanted(
                name.getText().strip(),
                currency.getText().strip(),
                Path.of(folder.getText().strip()),
                LocalDate.now(clock)));
        dialog.dispose();
    }

    private Optional<String> problem() {
        if (name.getText().isBlank()) {
            return Optional.of(words.text("new.noName"));
        } else if (!currency.getText().strip().matches("[A-Z]{3}")) {
            return Optional.of(words.text("new.noCurrency", currency.getText().strip()));
        }
        try {
            return folder.getText().isBlank()
                            || Path.of(folder.getText().strip()).getNameCount() == 0
                    ? Optional.of(words.text("new.noFolder"))
                    : Optional.empty();
        } catch (InvalidPathException noPath) {
            return Optional.of(words.text("new.noFolder"));
        }
    }

    /** Asks; nothing where the user gave up. */
    Optional<Wanted> ask() {
        dialog.setVisible(true);
        return wanted;
    }
}
