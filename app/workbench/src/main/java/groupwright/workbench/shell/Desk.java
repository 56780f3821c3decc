package groupwright.workbench.shell;

import groupwright.definition.figure.Ask;
import groupwright.definition.history.Conflict;
import groupwright.definition.ledger.LedgerThread;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.session.Session;
import groupwright.definition.session.Step;
import groupwright.workbench.ripple.RippleReading;
import groupwright.workbench.ripple.RippleSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * An open project as the event thread sees it: every call returns at once, the work is done on the ledger's thread in the
 * order of the calls, and what comes of it is told on the event thread.
 */
final class Desk {
    /** Is told what happens; on the event thread. */
    interface Listener {
        /** The project has moved; every step arrives, in order. */
        void stepped(Arrived arrived);

        /** Something was refused that nobody else is told about. */
        void refused(Invalid why);

        /** A mistake of the program. */
        void broken(Throwable mistake);
    }

    /**
     * A step with what it led to.
     *
     * @param after the project after it
     * @param ripple what it changed, in words
     */
    record Arrived(Step step, Definition after, RippleSheet ripple) {}

    private final LedgerThread thread;
    private final Session session; // only ever touched on that thread
    private final Executor eventThread;
    private final Locale locale;
    private final Listener listener;
    private boolean ended; // of the event thread

    Desk(LedgerThread thread, Session session, Executor eventThread, Locale locale, Listener listener) {
        this.thread = thread;
        this.session = session;
        this.eventThread = eventThread;
        this.locale = locale;
        this.listener = listener;
    }

    private void later(Runnable task) {
        if (ended) {
            return; // the window looks outside once more while it closes
        }
        thread.start(() -> {
            try {
                task.run();
            } catch (RuntimeException | Error mistake) {
                eventThread.execute(() -> listener.broken(mistake));
            }
            return null;
        });
    }

    private void arrive(Step step) {
        Definition after = session.definition();
        RippleSheet words = new RippleReading(step.before(), after, locale).of(step.ripple());
        eventThread.execute(() -> listener.stepped(new Arrived(step, after, words)));
    }

    void edit(Optional<String> name, UnaryOperator<Definition> edit, Consumer<Invalid> refused) {
        later(() -> {
            try {
                arrive(session.edit(name, edit));
            } catch (Invalid invalid) {
                eventThread.execute(() -> refused.accept(invalid));
            }
        });
    }

    void undo() {
        steps(session::undo);
    }

    void redo() {
        steps(session::redo);
    }

    void lookOutside() {
        steps(session::lookOutside);
    }

    void save() {
        steps(() -> Optional.of(session.save()));
    }

    void saveElsewhere(Path folder) {
        steps(() -> Optional.of(session.saveElsewhere(folder)));
    }

    void settle(Conflict conflict, Session.Choice choice) {
        steps(() -> Optional.of(session.settle(conflict, choice)));
    }

    private interface Stepping {
        Optional<Step> step();
    }

    private void steps(Stepping stepping) {
        later(() -> {
            try {
                stepping.step().ifPresent(this::arrive);
            } catch (Invalid invalid) {
                eventThread.execute(() -> listener.refused(invalid));
            }
        });
    }

    /** Asks the ledger; the answer is told on the event thread. */
    <T> void ask(Function<View, T> question, Consumer<T> answer) {
        later(() -> {
            T told = question.apply(new OwnedView(session.view()));
            eventThread.execute(() -> answer.accept(told));
        });
    }

    /** What is watched beside verdicts and claims. */
    void watchAlso(Collection<Ask> shown) {
        later(() -> session.watchAlso(shown));
    }

    /** The same open project for a window that is made anew, after all that was asked before. */
    void handOver(Consumer<Opener.Opened> next) {
        later(() -> {
            Shell.Opened project = Shell.Opened.of(session, List.of());
            eventThread.execute(() -> next.accept(new Opener.Opened(thread, project)));
        });
    }

    /** Closes the project after all that was asked before; then says so on the event thread. */
    void close(Runnable closed) {
        later(() -> {
            try {
                session.close();
            } catch (IOException stale) {
                // the lock goes with the process; what was edited is saved or was told to be unsaved before
            } finally {
                eventThread.execute(closed);
            }
        });
    }

    /** Lets go of the project, which another desk goes on with. */
    void leave() {
        ended = true;
    }

    /** Ends the thread; nothing may be asked any more. */
    void end() {
        ended = true;
        thread.close();
    }
}
