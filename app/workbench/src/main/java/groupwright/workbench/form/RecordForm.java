package groupwright.workbench.form;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.JPanel;

/**
 * One record of any kind as labelled fields. An edit of a field is one edit of the project; the place calls
 * {@link #refresh} after each step. All of it on the event thread; showing costs as much as the record has fields.
 */
public final class RecordForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient FormContext context;
    private transient Optional<RecordId> id = Optional.empty();
    private transient Optional<FormBody> body = Optional.empty();

    public RecordForm(Bench bench, Catalogue catalogue, Arrangement arrangement) {
        super(new BorderLayout());
        this.bench = bench;
        this.context = FormContext.of(bench, catalogue, arrangement);
        setOpaque(false);
    }

    /** Shows a record; what is being typed in the one before is taken or, where it is wrong, forgotten. */
    public void show(RecordId record) {
        if (id.equals(Optional.of(record))) {
            refresh();
            return;
        }
        body.ifPresent(FormBody::commitAll);
        removeAll();
        id = Optional.of(record);
        FormBody next = new FormBody(context, new RecordSource(bench, record));
        body = Optional.of(next);
        add(next, BorderLayout.CENTER);
        revalidate();
        repaint();
    }

    /** The record shown. */
    public Optional<RecordId> shown() {
        return id;
    }

    /** Shows the record as it is now; what somebody is typing stays. */
    public void refresh() {
        body.ifPresent(FormBody::refresh);
    }

    /** Brings a field into sight and gives it the focus; does nothing where the address names none of this record. */
    public void reveal(Address address) {
        if (!id.equals(Optional.of(address.record()))) {
            return;
        }
        body.flatMap(fields -> fields.row(address.path())).ifPresent(row -> {
            scrollRectToVisible(javax.swing.SwingUtilities.convertRectangle(row.getParent(), row.getBounds(), this));
            row.editor().input().requestFocusInWindow();
        });
    }

    FormBody body() {
        return body.orElseThrow();
    }
}
