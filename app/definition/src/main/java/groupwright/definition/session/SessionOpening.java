package groupwright.definition.session;

import groupwright.definition.problem.Problem;
import java.util.List;

/** What became of opening a project to work on it. */
public sealed interface SessionOpening {
    /**
     * The project is open; {@link Standing#saving} tells whether it can be edited.
     *
     * @param problems all that is wrong with it, references that lead nowhere included
     */
    record Opened(Session session, List<Problem> problems) implements SessionOpening {
        public Opened {
            problems = List.copyOf(problems);
        }
    }

    /** There is nothing to open; the problem says why. */
    record NotOpened(Problem problem) implements SessionOpening {}
}
