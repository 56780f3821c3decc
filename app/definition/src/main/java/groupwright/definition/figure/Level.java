package groupwright.definition.figure;

/** Layers of figures: each may ask any figure of a lower layer, and in its own only those it names. */
public enum Level {
    /** Computed from records: gearing, riding, weight, cost. */
    CALCULUS,
    /** Computed from criteria and figures of the calculus: verdicts. */
    ASSESSMENT,
    /** Computed from verdicts: ladder, coverage, claims. */
    COVERAGE
}
