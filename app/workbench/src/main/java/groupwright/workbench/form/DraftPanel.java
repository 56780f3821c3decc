package groupwright.workbench.form;

import groupwright.definition.interchange.Draft;
import groupwright.definition.record.Invalid;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import java.awt.FlowLayout;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;

/** Something new that is not in the project yet: its fields, then "Add …" and "Discard". */
final class DraftPanel extends Stack {
    private static final long serialVersionUID = 1L;

    private final transient DraftSource source;
    private final FormBody body;
    private final transient Consumer<Object> add;

    DraftPanel(FormContext context, Draft draft, String noun, Consumer<Object> add, Runnable discard) {
        this.source = new DraftSource(draft, this::refresh);
        this.add = add;
        this.body = new FormBody(context, source);
        JButton main = new JButton(context.words().text("form.add", noun));
        main.putClientProperty("FlatLaf.styleClass", "main");
        main.setName("form.add");
        main.addActionListener(pressed -> addNow());
        JButton plain = new JButton(context.words().text("form.discard"));
        plain.addActionListener(pressed -> discard.run());
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
        buttons.setOpaque(false);
        buttons.setBorder(BorderFactory.createEmptyBorder(
                Metric.STEP.px(), Look.pixels(168) - Metric.STEP.px() - Look.pixels(2), 0, 0));
        buttons.add(main);
        buttons.add(plain);
        add(body);
        add(buttons);
    }

    private void refresh() {
        body.refresh();
    }

    FormBody body() {
        return body;
    }

    Draft draft() {
        return source.draft();
    }

    void focusFirst() {
        source.draft().asked().stream()
                .findFirst()
                .flatMap(name -> body.row(java.util.List.of(name)))
                .ifPresent(row -> row.editor().input().requestFocusInWindow());
    }

    /** Adds it, or says at each field what is still asked for. */
    void addNow() {
        body.commitAll();
        if (source.draft().isComplete() && !body.isAnythingWrong()) {
            add.accept(source.draft().object());
            return;
        }
        source.draft().refusals().forEach(this::askFor);
        focusFirst();
    }

    /** What is typed but wrong already has its sentence. */
    private void askFor(Invalid missing) {
        Optional<FieldRow> row = body.row(java.util.List.of(missing.field()));
        if (row.isPresent() && row.get().sentence().isEmpty()) {
            body.say(missing);
        }
    }
}
