package groupwright.workbench.form;

import javax.swing.JComponent;

/** What a field is edited with. It knows text only; what the text means says the field's notation. */
interface Editor {
    /** What stands in the row. */
    JComponent component();

    /** What takes the focus and the keys. */
    JComponent input();

    String text();

    /** Shows a text; nobody is told. */
    void show(String text);

    /** Refuses keys; the text can still be copied. */
    void lock();

    /**
     * @param typing runs after each change by the person at the keys
     * @param done runs when what was typed is meant to hold: Enter, a choice from a list, focus lost
     */
    void tell(Runnable typing, Runnable done);
}
