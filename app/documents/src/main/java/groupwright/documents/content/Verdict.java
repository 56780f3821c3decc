package groupwright.documents.content;

/** Whether a criterion holds, and whether that is certain. */
public enum Verdict {
    MEETS("verdict.meets"),
    MISSES("verdict.misses"),
    /** Meets, but the target lies inside the band of what we know. */
    MEETS_CLOSE("verdict.meetsClose"),
    /** Misses, but the target lies inside the band of what we know. */
    MISSES_CLOSE("verdict.missesClose"),
    MISSING_INPUT("verdict.missing");

    private final String labelKey;

    Verdict(String labelKey) {
        this.labelKey = labelKey;
    }

    /** Key of the word in {@link groupwright.documents.labels.Labels}. */
    public String labelKey() {
        return labelKey;
    }

    /** True if the target lies inside the band. */
    public boolean isTooCloseToCall() {
        return this == MEETS_CLOSE || this == MISSES_CLOSE;
    }
}
