package groupwright.workbench.documents;

import groupwright.documents.numbers.Measures;
import groupwright.documents.pages.PaperSize;
import groupwright.documents.project.Format;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.start.DocumentChoices;
import groupwright.workbench.workings.EndsLayout;
import groupwright.workbench.workings.StackLayout;
import java.awt.FlowLayout;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** How documents are shown and written, writing them, and what came of it. */
final class WritingPanel extends JPanel {
    private static final List<String> LANGUAGES = List.of("", "en", "de");

    private final transient Words words;
    private final transient DocumentsPanel.Acts acts;
    private final Prose heading;
    private final Prose said;
    private final JPanel after = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
    private final Map<Format, JCheckBox> formats = new EnumMap<>(Format.class);
    private final ActionButton write;
    private transient DocumentChoices choices;

    WritingPanel(Words words, DocumentChoices choices, DocumentsPanel.Acts acts) {
        super(new StackLayout(Metric.HALF_STEP.px()));
        this.words = words;
        this.choices = choices;
        this.acts = acts;
        this.heading = new Prose(words.text("writeAll", ""), Type.TABLE, Weight.STRONG, Token.INK);
        this.said = new Prose(words.text("out"), Type.SECONDARY, Token.MUTED);
        this.write = ActionButton.main(words.text("write"), acts::write);
        setOpaque(false);
        write.setName("documents.write");
        after.setOpaque(false);
        add(choice("language", LANGUAGES, choices.language(), DocumentChoices::in));
        add(choice("measures", List.of(Measures.values()), choices.measures(), DocumentChoices::with));
        add(choice("paper", List.of(PaperSize.values()), choices.paper(), DocumentChoices::on));
        add(heading);
        add(formats());
        JPanel button = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        button.setOpaque(false);
        button.add(write);
        add(button);
        add(said);
        add(after);
        enableWriting();
    }

    /** The heading counts documents. */
    void count(int documents) {
        heading.setText(words.text("writeAll", Integer.toString(documents)));
    }

    private void choose(DocumentChoices next) {
        choices = next;
        enableWriting();
        acts.choose(next);
    }

    private void enableWriting() {
        boolean any = !choices.formats().isEmpty();
        write.setEnabled(any);
        write.setToolTipText(any ? null : words.text("write.noFormat"));
    }

    private <T> JComponent choice(
            String name, List<T> all, T now, BiFunction<DocumentChoices, T, DocumentChoices> change) {
        JComboBox<String> box = new JComboBox<>(
                all.stream().map(one -> words.text(name + "." + one)).toArray(String[]::new));
        box.setSelectedIndex(Math.max(0, all.indexOf(now)));
        box.setName("documents." + name);
        box.getAccessibleContext().setAccessibleName(words.text(name));
        box.addActionListener(event -> choose(change.apply(choices, all.get(box.getSelectedIndex()))));
        JPanel row = new JPanel(new EndsLayout(Metric.STEP.px(), Metric.ROW.px()));
        row.setOpaque(false);
        row.add(new Prose(words.text(name), Type.TABLE, Token.INK));
        row.add(box);
        return row;
    }

    private JComponent formats() {
        JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
        row.setOpaque(false);
        row.setBorder(BorderFactory.createEmptyBorder(0, -Metric.STEP.px(), 0, -Metric.GAP.px()));
        for (Format format : Format.values()) {
            JCheckBox box = new JCheckBox(
                    words.text("format." + format), choices.formats().contains(format));
            box.setName("documents.format." + format);
            box.setOpaque(false);
            box.addActionListener(event -> choose(choices.as(chosen())));
            formats.put(format, box);
            row.add(box);
        }
        return row;
    }

    private Set<Format> chosen() {
        List<Format> chosen = new ArrayList<>();
        formats.forEach((format, box) -> {
            if (box.isSelected()) {
                chosen.add(format);
            }
        });
        return chosen.isEmpty() ? EnumSet.noneOf(Format.class) : EnumSet.copyOf(chosen);
    }

    /**
     * Says what was written.
     *
     * @param folder where it lies now
     */
    void say(String what, Optional<Path> folder) {
        said.setText(what);
        said.getAccessibleContext().setAccessibleName(what);
        after.removeAll();
        folder.filter(any -> OpeningFolder.isSupported()).ifPresent(there -> {
            ActionLink open = new ActionLink(words.text("openFolder"), () -> acts.open(there));
            open.setName("documents.openFolder");
            after.add(open);
        });
        revalidate();
        repaint();
    }
}
