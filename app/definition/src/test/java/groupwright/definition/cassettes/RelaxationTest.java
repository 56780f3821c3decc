package groupwright.definition.cassettes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Scene;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.Cancelled;
import groupwright.drivetrain.search.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What would have to give way, on three cassettes that can be worked out by hand. */
class RelaxationTest {
    private static final List<Cassette> CASSETTES = List.of(of(10, 20), of(10, 30), of(12, 15));

    private static Cassette of(int small, int large) {
        return new Cassette(List.of(new Cog(small), new Cog(large)));
    }

    /** Range 200, 300, 125 %; step 100, 200, 25 %. */
    private static CassetteJudge judge(double range, double step) {
        Scene scene = Scene.of(
                Scene.record("C-001", "\"rings\": [30], \"cogs\": [10, 20]"),
                requirement("R-001", "gear-range", "at-least", range),
                requirement("R-002", "largest-step", "at-most", step));
        return CassetteJudge.of(scene.ledger(), RecordId.of("C", 1), Optional.empty(), SprocketMass.ASSUMED);
    }

    private static groupwright.definition.record.Entry requirement(
            String id, String figure, String comparator, double target) {
        return Scene.requirement(
                id,
                "\"criteria\": [{\"id\": \"k1\", \"figure\": \"%s\", \"comparator\": \"%s\", \"target\": %s}]"
                        .formatted(figure, comparator, target));
    }

    private static Relaxation.Outcome search(CassetteJudge judge) {
        return Relaxation.search(judge, CASSETTES.iterator(), 3, Progress.NONE);
    }

    @Test
    void nothingGivesWayWhereOneMissesNothing() {
        Relaxation.Outcome outcome = search(judge(190, 110));
        assertEquals(3, outcome.tried());
        assertEquals(1, outcome.free());
        assertEquals(Optional.of(of(10, 20)), outcome.example());
        assertTrue(outcome.smallest().isEmpty() && outcome.outOfReach().isEmpty());
    }

    @Test
    void theSmallestStepAsideIsFound() {
        // 10-20 misses the range by 50 of 250 (20 %) alone; 10-30 the step by 110 of 90 (122 %) and 10-20 that too
        Relaxation.Outcome outcome = search(judge(250, 120));
        Relaxation smallest = outcome.smallest().orElseThrow();
        assertEquals(of(10, 20), smallest.cassette());
        assertEquals(1, smallest.parts().size());
        assertEquals(200, smallest.parts().get(0).target(), 1e-9);
        assertEquals(50, smallest.parts().get(0).by(), 1e-9);
        assertEquals(20, smallest.parts().get(0).byPct(), 1e-9);
        assertEquals(
                List.of("R-001.k1", "R-002.k1"),
                outcome.alone().stream()
                        .map(relaxation -> relaxation.parts().get(0).criterion().name())
                        .toList());
        assertTrue(outcome.outOfReach().isEmpty());
    }

    @Test
    void whatNoCassetteMeetsIsOutOfReach() {
        Relaxation.Outcome outcome = search(judge(320, 20));
        assertEquals(
                List.of("R-001.k1 300.0", "R-002.k1 25.0"),
                outcome.outOfReach().stream()
                        .map(part -> part.criterion().name() + " " + Math.round(part.target() * 10) / 10.0)
                        .toList());
    }

    /** One cog has no step, so that the largest one lacks input: not met, but not missed either. */
    @Test
    void whatLacksInputForACassetteIsNotOutOfReach() {
        List<Cassette> cassettes = List.of(of(10, 20), new Cassette(List.of(new Cog(20))));
        Relaxation.Outcome outcome = Relaxation.search(judge(320, 20), cassettes.iterator(), 2, Progress.NONE);
        assertEquals(
                List.of("R-001.k1"),
                outcome.outOfReach().stream()
                        .map(part -> part.criterion().name())
                        .toList());
    }

    @Test
    void itCanBeStopped() {
        List<Long> told = new ArrayList<>();
        Progress twice = new Progress() {
            @Override
            public void report(long done, long total) {
                told.add(done);
            }

            @Override
            public boolean cancelled() {
                return told.size() == 2;
            }
        };
        assertThrows(Cancelled.class, () -> Relaxation.search(judge(250, 120), CASSETTES.iterator(), 3, twice));
        assertEquals(List.of(1L, 2L), told);
    }
}
