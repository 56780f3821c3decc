package groupwright.definition.history;

import groupwright.definition.record.Definition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The edits that can be undone and those that can be done again, as an immutable value.
 *
 * <p>Undoing is a merge: the way from after the edit back to before it, joined with what became of the project since. So
 * only what the edit changed goes back, and what others changed meanwhile stays and is told as a conflict.
 */
public final class History {
    /** How many edits are kept; the definitions before and after share all but the edited records. */
    public static final int MOST = 500;

    /** Nothing done yet. */
    public static final History EMPTY = new History(List.of(), List.of());

    /** One edit. */
    public record Edit(EditName name, Definition before, Definition after) {}

    /**
     * A step back or forth.
     *
     * @param edit the edit undone or done again
     * @param merge the project after it; conflicts tell what of the edit was left because others changed it since
     * @param history what can be undone and done again from there
     */
    public record Moved(Edit edit, Merge merge, History history) {}

    private final List<Edit> done; // last one last
    private final List<Edit> undone; // next one last

    private History(List<Edit> done, List<Edit> undone) {
        this.done = done;
        this.undone = undone;
    }

    /** With one more edit; what was undone before it cannot be done again. The oldest beyond {@link #MOST} is forgotten. */
    public History with(Edit edit) {
        return new History(and(done, edit), List.of());
    }

    /** The edit that would be undone. */
    public Optional<Edit> last() {
        return end(done);
    }

    /** The edit that would be done again. */
    public Optional<Edit> next() {
        return end(undone);
    }

    /** Undoes the last edit in the project as it is now; nothing where there is none. */
    public Optional<Moved> undo(Definition present) {
        return last().map(edit -> new Moved(
                edit,
                Merge.of(edit.after(), present, edit.before()),
                new History(withoutEnd(done), and(undone, edit))));
    }

    /** Does the edit again that was undone last; nothing where there is none. */
    public Optional<Moved> redo(Definition present) {
        return next().map(edit -> new Moved(
                edit,
                Merge.of(edit.before(), present, edit.after()),
                new History(and(done, edit), withoutEnd(undone))));
    }

    private static Optional<Edit> end(List<Edit> edits) {
        return edits.isEmpty() ? Optional.empty() : Optional.of(edits.get(edits.size() - 1));
    }

    private static List<Edit> withoutEnd(List<Edit> edits) {
        return List.copyOf(edits.subList(0, edits.size() - 1));
    }

    private static List<Edit> and(List<Edit> edits, Edit edit) {
        List<Edit> longer = new ArrayList<>(edits.subList(Math.max(0, edits.size() + 1 - MOST), edits.size()));
        longer.add(edit);
        return List.copyOf(longer);
    }
}
