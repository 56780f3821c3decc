package groupwright.benchmarks;

/** A load between 0 and 102.3 in steps of 0.1, made on the fly from a fixed seed: a mean that drifts, and noise on it. */
final class RandomLoad {
    private static final int HIGHEST = 1023;

    private long state = 0x9E3779B97F4A7C15L;
    private int drift = HIGHEST / 2;

    double next() {
        state ^= state << 13;
        state ^= state >>> 7;
        state ^= state << 17;
        drift = Math.max(0, Math.min(HIGHEST, drift + (int) (state & 15) - 7));
        int noise = (int) (state >>> 8 & 63) - 32;
        return Math.max(0, Math.min(HIGHEST, drift + noise)) * 0.1;
    }
}
