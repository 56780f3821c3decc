package groupwright.workbench.requirements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Settings;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Theme;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A project far larger than the sample: 2,000 more requirements on its lead concept. */
class ManyRequirementsTest {
    private static final long SEED = 20260309;
    private static final int MORE = 2000;
    private static final int FIRST = 1001;

    /** Targets for the largest step of C-002 from 14 teeth up, which is 20 %; every tenth has no criterion. */
    private static Definition many() {
        Random random = new Random(SEED);
        Definition definition = Sample.definition();
        for (int i = 0; i < MORE; i++) {
            definition = definition.with(requirement(i, random.nextInt(5, 40)));
        }
        return definition;
    }

    private static Requirement requirement(int number, int target) {
        List<Criterion> criteria = number % 10 == 0
                ? List.of()
                : List.of(new Criterion(
                        "k1",
                        "largest-step",
                        Settings.NONE.with("from-teeth", "14"),
                        Criterion.Comparator.AT_MOST,
                        Amount.of(target),
                        Optional.empty(),
                        "%",
                        Optional.empty()));
        return new Requirement(
                RecordId.of("R", FIRST + number),
                Requirement.Kind.FUNCTION,
                "Made up " + number,
                "The step shall be at most " + target + " %.",
                "",
                List.of(),
                List.of(),
                List.of(),
                criteria,
                Requirement.Verification.ANALYSIS,
                5,
                "",
                Requirement.RiderSafety.NO,
                List.of(),
                Requirement.State.AGREED,
                "",
                "");
    }

    @Test
    void allStandInTheListAndTheirVerdictsAreThoseOfArithmetic() throws Exception {
        Painted painted = Painted.of(many(), Theme.LIGHT, 1);
        painted.at(1000, 800);
        int misses = 0;
        List<String> wrong = new ArrayList<>();
        for (Listing.Line line : painted.view.lines()) {
            if (line.listed().id().number() >= FIRST && line.row() instanceof Row.Measured row) {
                int target = Integer.parseInt(row.limit().number());
                String expected = target >= 20 ? "meets" : "misses";
                misses += target >= 20 ? 0 : 1;
                if (!row.verdict().orElseThrow().words().equals(expected)) {
                    wrong.add(line.listed().id() + " at most " + target);
                }
            }
        }
        assertEquals(List.of(), wrong, "seed " + SEED);
        assertTrue(misses > 100, "seed " + SEED);
        Listing listing = Listing.of(ReadingTest.of(painted.bench.definition()).sheet(), Filter.NONE, any -> false);
        assertEquals(MORE + 49, listing.counts().get(Facet.ALL));
        assertEquals(misses + 6, listing.counts().get(Facet.MISSES), "seed " + SEED);
        assertEquals(MORE / 10 + 7, listing.counts().get(Facet.NOT_MEASURABLE));
    }
}
