package groupwright.workbench.requirements;

import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Which requirements are shown and in which order.
 *
 * @param words parted by blanks; all must occur
 * @param riders only those about this rider group
 * @param kind only those of this kind
 */
record Filter(Facet facet, String words, Optional<RecordId> riders, Optional<Requirement.Kind> kind, Sorting sorting) {
    static final Filter NONE = new Filter(Facet.ALL, "", Optional.empty(), Optional.empty(), Sorting.ID);

    Filter {
        Objects.requireNonNull(facet, "facet");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(riders, "riders");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(sorting, "sorting");
    }

    Filter with(Facet other) {
        return new Filter(other, words, riders, kind, sorting);
    }

    Filter withWords(String other) {
        return new Filter(facet, other, riders, kind, sorting);
    }

    Filter withRiders(Optional<RecordId> other) {
        return new Filter(facet, words, other, kind, sorting);
    }

    Filter withKind(Optional<Requirement.Kind> other) {
        return new Filter(facet, words, riders, other, sorting);
    }

    Filter with(Sorting other) {
        return new Filter(facet, words, riders, kind, other);
    }

    /** Whether a requirement passes all but the facet. */
    boolean passes(Listed listed) {
        return riders.map(listed::isAbout).orElse(true)
                && kind.map(listed.kind()::equals).orElse(true)
                && Arrays.stream(words.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                        .allMatch(listed.words()::contains);
    }
}
