package groupwright.drivetrain.search;

/** Watches a long computation and may stop it; called on the thread that computes. */
public interface Progress {
    /** Nobody watches. */
    Progress NONE = new Progress() {
        @Override
        public void report(long done, long total) {
            // nobody watches
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** Says how far the work is; 0 ≤ done ≤ total, total above 0. */
    void report(long done, long total);

    /** Whether the work is to stop. */
    boolean cancelled();

    /** Throws {@link Cancelled} if the work is to stop. */
    default void orStop() {
        if (cancelled()) {
            throw new Cancelled();
        }
    }
}
