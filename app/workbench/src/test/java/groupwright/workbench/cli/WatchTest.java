package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WatchTest {
    private final List<String> screen = new ArrayList<>();
    private long nowMs;

    private Watch watch() {
        return new Watch(screen::add, () -> nowMs * 1_000_000).doing("searching");
    }

    @Test
    void whatIsDoneWithinASecondIsNotTold() {
        try (Watch watch = watch()) {
            nowMs = 999;
            watch.report(1, 2);
        }
        assertEquals(List.of(), screen);
    }

    @Test
    void laterItIsToldNowAndThenAndWiped() {
        try (Watch watch = watch()) {
            nowMs = 1000;
            watch.report(1, 4);
            nowMs = 1100;
            watch.report(2, 4);
            nowMs = 1200;
            watch.report(4, 4);
        }
        assertEquals(List.of("\rsearching: 25 %", "\rsearching: 100 %", "\r" + " ".repeat(16) + "\r"), screen);
    }

    /** The computation may run on another thread, which goes on a little. */
    @Test
    void afterItIsClosedNothingIsToldAndTheComputationStops() {
        Watch watch = watch();
        watch.close();
        nowMs = 5000;
        watch.report(1, 2);
        assertEquals(List.of(), screen);
        assertTrue(watch.cancelled());
    }

    @Test
    void interruptingTheThreadCancels() {
        try (Watch watch = watch()) {
            assertTrue(!watch.cancelled());
            Thread.currentThread().interrupt();
            assertTrue(watch.cancelled());
            assertTrue(Thread.interrupted());
        }
    }
}
