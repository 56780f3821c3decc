package groupwright.documents.charts;

import groupwright.documents.charts.ConceptSign.Standing;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Charts of three invented concepts. */
public final class SampleCharts {
    public static final ConceptSign LEAD = new ConceptSign(2, Standing.LEAD);
    private static final double ROLL_OUT_M = 2.312;

    private SampleCharts() {}

    /** Two rings with ten cogs, one ring with eleven, one with twelve, and two needs. */
    public static GearLadder ladder() {
        List<Integer> ten = List.of(11, 12, 14, 16, 18, 21, 24, 28, 32, 38);
        ConceptSign first = new ConceptSign(1, Standing.OTHER);
        return new GearLadder(
                "G-003",
                List.of(
                        lane(first, "C-001", 36, ten.subList(0, 9)),
                        lane(first, "C-001", 24, ten),
                        lane(LEAD, "C-002", 32, List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 45)),
                        lane(
                                new ConceptSign(3, Standing.OTHER),
                                "C-003",
                                34,
                                List.of(10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 44, 50))),
                List.of(
                        new GearLadder.Need(1.58, "R-003 needs 1.58 m or less"),
                        new GearLadder.Need(7.54, "R-004 needs 7.54 m or more")),
                Locale.ENGLISH);
    }

    private static GearLadder.Lane lane(ConceptSign sign, String concept, int ring, List<Integer> cogs) {
        return new GearLadder.Lane(
                sign,
                concept,
                ring,
                cogs.stream().map(cog -> ROLL_OUT_M * ring / cog).toList());
    }

    /** One ring with eleven cogs; from 14 teeth upwards at most 18 %. */
    public static StepBars bars() {
        return StepBars.of(
                LEAD,
                "C-002",
                steps(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 45),
                Optional.of(new StepBars.Limit(14, 18)),
                Locale.ENGLISH);
    }

    /** Steps between cogs. */
    public static List<StepBars.Step> steps(int... cogs) {
        return IntStream.range(1, cogs.length)
                .mapToObj(i -> new StepBars.Step(
                        cogs[i - 1], cogs[i], 100.0 * cogs[i] / cogs[i - 1] - 100, gcd(cogs[i - 1], cogs[i])))
                .toList();
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
