package groupwright.workbench.requirements;

import java.util.Comparator;

/** In which order requirements stand; ties by id. */
enum Sorting {
    ID(Comparator.comparing(Listed::id)),
    /** The worst first; those without a margin last. */
    MARGIN(Comparator.comparingDouble((Listed listed) -> listed.margin().orElse(Double.POSITIVE_INFINITY))
            .thenComparing(Listed::id)),
    /** The heaviest first. */
    WEIGHT(Comparator.comparingInt(Listed::weight).reversed().thenComparing(Listed::id));

    private final Comparator<Listed> order;

    Sorting(Comparator<Listed> order) {
        this.order = order;
    }

    Comparator<Listed> order() {
        return order;
    }
}
