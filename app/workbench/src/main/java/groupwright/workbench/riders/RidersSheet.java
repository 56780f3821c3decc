package groupwright.workbench.riders;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.notation.Notation;
import java.util.List;
import java.util.Optional;

/**
 * Rider groups side by side, and needs.
 *
 * @param groups in use, in the order of ids; each is a column
 * @param lines what is known of them, a cell for each group
 * @param retired groups no longer used
 */
record RidersSheet(List<Group> groups, List<Line> lines, List<Retired> retired, List<NeedRow> needs) {
    static final RidersSheet NOTHING = new RidersSheet(List.of(), List.of(), List.of(), List.of());

    /**
     * One group.
     *
     * @param importance 1 to 10
     * @param share of the importance of all groups in use, in percent; the shares add up to 100
     * @param cadence its window, where all of it is known
     */
    record Group(
            RecordId id, String title, int importance, int share, Optional<Cadence> cadence, List<Terrain> terrain) {
        Group {
            terrain = List.copyOf(terrain);
        }
    }

    /** A cadence window in rpm. */
    record Cadence(double least, double low, double high, double most) {}

    /** How much of the distance lies on which grade. */
    record Terrain(String grade, double share, Slope slope) {}

    /** Which way a stretch leads. */
    enum Slope {
        DOWN,
        FLAT_OR_UP
    }

    /** A group that is retired, and why. */
    record Retired(RecordId id, String title, String reason) {}

    /**
     * One row of the columns.
     *
     * @param field name of the field, or of the first of those it shows
     */
    record Line(String label, String field, Rank rank, Kind kind, List<Cell> cells) {
        Line {
            cells = List.copyOf(cells);
        }
    }

    /** Whether a row always stands there. */
    enum Rank {
        MAIN,
        /** Only with all fields shown. */
        FURTHER
    }

    /** How a row is shown and edited. */
    enum Kind {
        NUMBER,
        TEXT,
        /** Shown in words, edited in the form of the group. */
        IN_FORM
    }

    /**
     * What stands in one column of a row.
     *
     * @param at where it stands
     * @param value what stands there; nothing where the field is empty
     * @param behind in muted, derived from it; may be empty
     * @param name for those who do not see where it stands
     */
    record Cell(
            Address at, Optional<?> value, String shown, String unit, String behind, String name, Notation notation) {}

    RidersSheet {
        groups = List.copyOf(groups);
        lines = List.copyOf(lines);
        retired = List.copyOf(retired);
        needs = List.copyOf(needs);
    }

    /** Whether there is nothing at all. */
    boolean isEmpty() {
        return groups.isEmpty() && retired.isEmpty() && needs.isEmpty();
    }
}
