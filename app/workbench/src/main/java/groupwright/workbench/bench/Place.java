package groupwright.workbench.bench;

import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import java.util.List;
import javax.swing.JComponent;

/**
 * A place of the window. It shows sheets: immutable values made on the ledger's thread, which the event thread only paints.
 */
public interface Place {
    PlaceName name();

    /** What stands in the middle of the window; the same component each time. Event thread. */
    JComponent component();

    /**
     * What it shows, cheap things first. Each stage is asked on the ledger's thread after each step while the place is in
     * sight, and again when {@link Bench#refresh} is called; what an earlier stage shows stays until a later one is done.
     */
    List<Sheet> sheets();

    /**
     * How many things are open here, for the rail; 0 for none. Ledger thread.
     */
    int openThings(View view);

    /** Shows a record of this place, with the field in focus where the address names one. Event thread. */
    void reveal(Address address);

    /** One sheet of a place. */
    @FunctionalInterface
    interface Sheet {
        /**
         * Asks what is to be shown. Ledger thread.
         *
         * @return shows it; called on the event thread, and not at all where the project has moved on by then
         */
        Runnable read(View view);
    }
}
