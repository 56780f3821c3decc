package groupwright.workbench.concepts;

import groupwright.workbench.lists.Keys;
import java.util.List;
import java.util.Optional;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** A row of teeth as text. What is wrong with it is said while typing goes on; Enter takes it, Escape leaves it. */
final class ToothField extends JTextField {
    private static final long serialVersionUID = 1L;

    private final transient ToothRow row;
    private final transient Teeth teeth;
    private final transient Runnable done;
    private transient List<Integer> before = List.of();

    /** @param done the row has been taken or left */
    ToothField(ToothRow row, Teeth teeth, Runnable done) {
        this.row = row;
        this.teeth = teeth;
        this.done = done;
        setName("type " + row.field() + " " + teeth.concept());
        getAccessibleContext().setAccessibleName(teeth.words().text(row.field() + ".field", teeth.concept()));
        Keys.bind(this, "ENTER", this::take);
        Keys.bind(this, "ESCAPE", this::leave);
        getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent change) {
                judge();
            }

            @Override
            public void removeUpdate(DocumentEvent change) {
                judge();
            }

            @Override
            public void changedUpdate(DocumentEvent change) {
                judge();
            }
        });
    }

    /** Begins with the row as it is. */
    void begin(List<Integer> now) {
        before = List.copyOf(now);
        setText(row.text(now));
        selectAll();
    }

    private void judge() {
        say(row.wrongSoFar(getText()));
    }

    private void say(Optional<ToothRow.Refused> wrong) {
        String sentence = wrong.map(refused -> teeth.sentence(row, refused)).orElse("");
        putClientProperty("JComponent.outline", wrong.isPresent() ? "error" : null);
        getAccessibleContext().setAccessibleDescription(sentence);
        teeth.say(sentence);
    }

    private void leave() {
        say(Optional.empty());
        done.run();
    }

    private void take() {
        ToothRow.Outcome outcome = row.read(getText());
        if (outcome instanceof ToothRow.Refused refused) {
            say(Optional.of(refused));
        } else {
            List<Integer> typed = ((ToothRow.Changed) outcome).teeth();
            if (!typed.equals(before)) {
                teeth.edit(row, now -> outcome);
            }
            done.run();
        }
    }
}
