package groupwright.workbench.shell;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.form.Arrangement;
import groupwright.workbench.form.RecordForm;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Window;
import javax.swing.BorderFactory;
import javax.swing.JDialog;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** The settings of the project, which have no place of their own, as a form that may stay open beside the window. */
final class SettingsDialog {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 560;

    private final RecordForm form;
    private final Words words;
    private JDialog dialog;

    SettingsDialog(Bench bench, Catalogue catalogue, Words words) {
        this.words = words;
        this.form = new RecordForm(bench, catalogue, Arrangement.usual());
        form.setBorder(
                BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
    }

    /** Shows them, with the field in focus where the address names one. */
    void show(Component above, Address address) {
        if (dialog == null) {
            Window owner = SwingUtilities.getWindowAncestor(above);
            dialog = new JDialog(owner, words.text("settings"));
            dialog.setName("settings");
            JScrollPane scroll = new JScrollPane(form);
            scroll.getViewport().setBackground(Token.SURFACE.colour());
            scroll.setBorder(BorderFactory.createEmptyBorder());
            scroll.getVerticalScrollBar().setUnitIncrement(Metric.ROW.px());
            dialog.add(scroll);
            dialog.getRootPane()
                    .registerKeyboardAction(
                            event -> dialog.setVisible(false),
                            KeyStroke.getKeyStroke("ESCAPE"),
                            javax.swing.JComponent.WHEN_IN_FOCUSED_WINDOW);
            dialog.setSize(new Dimension(Look.pixels(WIDTH), Look.pixels(HEIGHT)));
            dialog.setLocationRelativeTo(owner);
            form.show(RecordId.PROJECT);
        }
        dialog.setVisible(true);
        form.reveal(address);
    }

    /** After each step. */
    void refresh() {
        form.refresh();
    }

    void close() {
        if (dialog != null) {
            dialog.dispose();
        }
    }
}
