package groupwright.definition.figure;

import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a figure is asked about: at most one record of each scope, for example C-002 and G-001. */
public final class Subject implements Comparable<Subject> {
    /** Nothing in particular. */
    public static final Subject NONE = new Subject(0, new RecordId[0]);

    private final int mask; // one bit for each scope that is present
    private final RecordId[] ids; // in the order of scopes; never written after construction
    private final int hash;

    private Subject(int mask, RecordId[] ids) {
        this.mask = mask;
        this.ids = ids;
        this.hash = Arrays.hashCode(ids);
    }

    /**
     * A subject of these records, in any order.
     *
     * @throws IllegalArgumentException if two are of one kind, or no figure can be asked about a kind
     */
    public static Subject of(RecordId... records) {
        return of(List.of(records));
    }

    /** See {@link #of(RecordId...)}. */
    public static Subject of(List<RecordId> records) {
        Subject subject = NONE;
        for (RecordId id : records) {
            subject = subject.with(id);
        }
        return subject;
    }

    /** This with one more record. */
    public Subject with(RecordId id) {
        Scope scope = Scope.of(id)
                .orElseThrow(() -> new IllegalArgumentException("no figure is asked about records like " + id));
        int bit = 1 << scope.ordinal();
        if ((mask & bit) != 0) {
            throw new IllegalArgumentException(
                    "two records of one kind, " + get(scope).orElseThrow() + " and " + id + "; name one");
        }
        int at = Integer.bitCount(mask & (bit - 1));
        RecordId[] longer = new RecordId[ids.length + 1];
        System.arraycopy(ids, 0, longer, 0, at);
        longer[at] = id;
        System.arraycopy(ids, at, longer, at + 1, ids.length - at);
        return new Subject(mask | bit, longer);
    }

    /** The record of a scope. */
    public Optional<RecordId> get(Scope scope) {
        int bit = 1 << scope.ordinal();
        return (mask & bit) == 0 ? Optional.empty() : Optional.of(ids[Integer.bitCount(mask & (bit - 1))]);
    }

    /** Whether the record of a scope is there. */
    public boolean has(Scope scope) {
        return (mask & (1 << scope.ordinal())) != 0;
    }

    /** One bit for each scope that is present, by its ordinal. */
    int mask() {
        return mask;
    }

    /** The records, in the order of scopes. */
    public List<RecordId> ids() {
        return List.of(ids);
    }

    /** The scopes of the records. */
    public Set<Scope> scopes() {
        EnumSet<Scope> scopes = EnumSet.noneOf(Scope.class);
        for (Scope scope : Scope.values()) {
            if (has(scope)) {
                scopes.add(scope);
            }
        }
        return scopes;
    }

    /** Only the records of these scopes. */
    public Subject only(Set<Scope> scopes) {
        List<RecordId> kept = new ArrayList<>();
        scopes.forEach(scope -> get(scope).ifPresent(kept::add));
        return of(kept);
    }

    @Override
    public int compareTo(Subject other) {
        for (int i = 0; i < Math.min(ids.length, other.ids.length); i++) {
            int order = ids[i].compareTo(other.ids[i]);
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(ids.length, other.ids.length);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Subject subject && subject.hash == hash && Arrays.equals(ids, subject.ids);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (RecordId id : ids) {
            text.append(text.isEmpty() ? "" : " ").append(id);
        }
        return text.toString();
    }
}
