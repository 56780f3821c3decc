package groupwright.workbench.bench;

import groupwright.definition.figure.Ask;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * What a place may ask of the window around it. All of it is called on the event thread and returns at once; what takes
 * time happens on the ledger's thread, and answers come back on the event thread.
 */
public interface Bench {
    /** Language and country of the reader: digits, decimal sign, words. */
    Locale locale();

    /** The project after the last step, an immutable value. */
    Definition definition();

    /** What the last step changed, for the patch behind a number; kept until the next step. */
    Recent recent();

    /**
     * Edits the project: saves it, moves the ledger, shows the ripple, refreshes what is in sight.
     *
     * @param name what the edit is called in undo; nothing where the changed fields name it
     * @param edit a pure function; it runs on the ledger's thread on the project as it is then
     * @param refused is told why nothing was changed
     */
    void edit(Optional<String> name, UnaryOperator<Definition> edit, Consumer<Invalid> refused);

    /** Asks the ledger something that only this caller wants to know. */
    <T> void ask(Function<View, T> question, Consumer<T> answer);

    /** The same for long work on values, away from ledger and event thread; shows progress and can be stopped. */
    <T> void work(Work<T> work, Consumer<T> done);

    /** Reads the sheets of the place in sight again. */
    void refresh();

    /** Makes a figure the one that Workings shows. */
    void select(Ask ask);

    /** The figure that Workings shows. */
    Optional<Ask> selected();

    /** Goes to a record, and to its field where the address names one. */
    void open(Address address);

    /** Tells the user what is wrong, in a problem entry that stays until it is closed. */
    void tell(Problem problem);

    /** What the last step changed. */
    interface Recent {
        /** What stood in a field before, if the last step changed it. */
        Optional<Object> before(Address field);

        /** The watched questions whose answers the last step changed. */
        Set<Ask> asks();
    }

    /** Long work. */
    interface Work<T> {
        /** What is being done, for example {@code Writing documents}. */
        String name();

        /** Does it; asks {@link Progress#isStopped} often. */
        T with(Progress progress) throws Exception;
    }

    /** How far some work is. */
    interface Progress {
        /** Says how far; 0 ≤ done ≤ total. */
        void at(long done, long total);

        boolean isStopped();

        /** Nobody watches. */
        Progress NONE = new Progress() {
            @Override
            public void at(long done, long total) {
                // nobody watches
            }

            @Override
            public boolean isStopped() {
                return false;
            }
        };
    }
}
