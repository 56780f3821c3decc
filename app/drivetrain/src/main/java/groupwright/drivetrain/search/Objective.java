package groupwright.drivetrain.search;

/** What cassettes are compared by. */
public enum Objective {
    /** The largest step in percent; less is better. */
    LARGEST_STEP("largest-step", "%", Better.LOWER),
    /** Unevenness of the steps in percent; less is better. */
    UNEVENNESS("unevenness", "%", Better.LOWER),
    /** Sum of the phase mismatches of all pairs in mm; less is better. */
    MISMATCH("mismatch", "mm", Better.LOWER),
    /** Estimated mass of the sprockets in g; less is better. */
    MASS("mass", "g", Better.LOWER),
    /** Largest over smallest cog in percent; more is better. Tells nothing unless the ends may vary. */
    GEAR_RANGE("gear-range", "%", Better.HIGHER);

    private final String id;
    private final String unit;
    private final Better better;

    Objective(String id, String unit, Better better) {
        this.id = id;
        this.unit = unit;
        this.better = better;
    }

    /** The name in commands and files, for example {@code largest-step}. */
    public String id() {
        return id;
    }

    /** The unit of its values. */
    public String unit() {
        return unit;
    }

    /** Which values are better. */
    public Better better() {
        return better;
    }

    /** Which of two values is better. */
    public enum Better {
        /** The lower one. */
        LOWER,
        /** The higher one. */
        HIGHER
    }
}
