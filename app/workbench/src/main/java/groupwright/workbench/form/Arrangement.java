package groupwright.workbench.form;

import java.util.Set;

/**
 * Which fields a form leaves out and which it only shows.
 *
 * @param hidden names of fields of the record that are not shown
 * @param locked names of fields that are shown but not edited here
 */
public record Arrangement(Set<String> hidden, Set<String> locked) {
    public Arrangement {
        hidden = Set.copyOf(hidden);
        locked = Set.copyOf(locked);
    }

    /** What was approved, signed or frozen is never typed, and a record is retired by an action with its reason. */
    public static Arrangement usual() {
        return new Arrangement(Set.of("retired"), Set.of("id", "format", "approvals", "frozen"));
    }

    /** The same with more fields left out. */
    public Arrangement without(String... fields) {
        Set<String> more = new java.util.HashSet<>(hidden);
        more.addAll(Set.of(fields));
        return new Arrangement(more, locked);
    }
}
