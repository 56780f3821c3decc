package groupwright.drivetrain.search;

/** Counts what is done and passes it on. */
final class Ticker {
    private final Progress progress;
    private final long total;
    private long done;

    Ticker(Progress progress, long total) {
        this.progress = progress;
        this.total = total;
    }

    /** One more piece is done; throws {@link Cancelled} if the work is to stop. */
    void tick() {
        check();
        done++;
        progress.report(done, total);
    }

    /** Throws {@link Cancelled} if the work is to stop. */
    void check() {
        if (progress.cancelled()) {
            throw new Cancelled();
        }
    }
}
