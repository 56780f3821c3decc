package groupwright.benchmarks;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;

/**
 * Bytes that this thread allocates while it counts, what is thrown away again included: no less than what the counter
 * holds at any time.
 */
final class RainflowMemory {
    private static final int FEW = 1_000_000;

    private RainflowMemory() {}

    /** Bytes for so many samples as a stream. */
    static long streamedBytes(int samples) {
        RainflowBenchmark.streamed(FEW); // loads classes
        return allocated(() -> RainflowBenchmark.streamed(samples));
    }

    /** Bytes for so many samples in constant memory. */
    static long steppedBytes(int samples) {
        RainflowBenchmark.stepped(FEW);
        return allocated(() -> RainflowBenchmark.stepped(samples));
    }

    /** Bytes for each sample on lists, measured on a million. */
    static double listBytesPerSample() {
        RainflowBenchmark.listed(FEW);
        return allocated(() -> RainflowBenchmark.listed(FEW)) / (double) FEW;
    }

    private static long allocated(Runnable count) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(id);
        count.run();
        return threads.getThreadAllocatedBytes(id) - before;
    }
}
