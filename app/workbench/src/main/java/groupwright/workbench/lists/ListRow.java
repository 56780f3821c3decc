package groupwright.workbench.lists;

import groupwright.workbench.components.Mark;
import java.util.Optional;

/**
 * A row of a list.
 *
 * @param <R> what rows show
 */
public sealed interface ListRow<R> {
    /** A row that shows something. */
    record Item<R>(R value) implements ListRow<R> {}

    /** A line over those that belong together: mark, word, and what it means in muted. */
    record Head<R>(Optional<Mark> mark, String word, String about) implements ListRow<R> {}
}
