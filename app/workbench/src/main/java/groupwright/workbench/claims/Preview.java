package groupwright.workbench.claims;

import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.Prose;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.FieldWords;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.Document;
import javax.swing.text.JTextComponent;

/** What a wording reads like today, while it is typed. */
final class Preview extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Words words;
    private final Stack stack = new Stack(Metric.HALF_STEP.units() / 2);
    private transient Optional<Document> watched = Optional.empty();
    private transient Optional<Wording> shown = Optional.empty();

    Preview(Bench bench, Words words) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        setOpaque(false);
        setName("claims.preview");
        add(stack);
    }

    /** Follows the field of the wording in a form. Call again after the form was built anew. */
    void follow(Container form) {
        field(form).ifPresent(field -> {
            if (!watched.equals(Optional.of(field.getDocument()))) {
                watched = Optional.of(field.getDocument());
                field.getDocument().addDocumentListener(new DocumentListener() {
                    @Override
                    public void insertUpdate(DocumentEvent event) {
                        ask(field.getText());
                    }

                    @Override
                    public void removeUpdate(DocumentEvent event) {
                        ask(field.getText());
                    }

                    @Override
                    public void changedUpdate(DocumentEvent event) {
                        // only its looks changed
                    }
                });
                ask(field.getText());
            }
        });
    }

    private static Optional<JTextComponent> field(Container form) {
        String name = FieldWords.label(RecordKinds.CLAIM
                .shape()
                .components()
                .get(RecordKinds.CLAIM.shape().indexOf("wording")));
        for (Component child : form.getComponents()) {
            if (child instanceof JTextComponent text
                    && name.equals(text.getAccessibleContext().getAccessibleName())) {
                return Optional.of(text);
            }
            Optional<JTextComponent> inside =
                    child instanceof Container container ? field(container) : Optional.empty();
            if (inside.isPresent()) {
                return inside;
            }
        }
        return Optional.empty();
    }

    private void ask(String typed) {
        bench.ask(view -> new WordingReading(view, bench.locale()).of(typed), this::show);
    }

    private void show(Wording wording) {
        shown = Optional.of(wording);
        stack.removeAll();
        if (!wording.text().isBlank()) {
            stack.add(new Prose(words.text("preview"), Type.CAPTION, Weight.STRONG, Token.MUTED));
            Prose reads = new Prose(wording.quoted(), Type.HEADING, Token.INK);
            reads.getAccessibleContext().setAccessibleName(words.text("preview.name", wording.quoted()));
            stack.add(reads);
        }
        wording.wrong().forEach(sentence -> stack.add(new Prose(sentence, Type.TABLE, Token.INK)));
        revalidate();
        repaint();
    }

    Optional<Wording> shown() {
        return shown;
    }
}
