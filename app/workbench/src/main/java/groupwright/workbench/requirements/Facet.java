package groupwright.workbench.requirements;

/** Ways to look at a part of the requirements. One requirement may belong to several. */
enum Facet {
    /** In use, parked ones too. */
    ALL,
    MISSES,
    TOO_CLOSE,
    MISSING_INPUT,
    NOT_MEASURABLE,
    /** By the last step. */
    CHANGED,
    DRAFT,
    PARKED,
    RETIRED;

    /** Whether it is shown where nothing belongs to it. */
    boolean isAlwaysShown() {
        return compareTo(CHANGED) <= 0;
    }
}
