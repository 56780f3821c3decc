package groupwright.workbench.cli;

/** What the program tells its caller when it ends. */
enum Exit {
    /** All is fine. */
    FINE(0),
    /** An agreed requirement of the lead concept misses for certain, or an approved claim no longer holds. */
    FAILS(1),
    /** Bad usage, or something of the input could not be read. */
    REFUSED(2),
    /** A mistake of the program itself, or it was interrupted. */
    BROKEN(3);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    /** What a code means; any other than ours is a break. */
    static Exit of(int code) {
        for (Exit exit : values()) {
            if (exit.code == code) {
                return exit;
            }
        }
        return BROKEN;
    }

    int code() {
        return code;
    }
}
