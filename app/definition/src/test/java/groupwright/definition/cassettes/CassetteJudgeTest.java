package groupwright.definition.cassettes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Scene;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Cassettes held against the sample's requirements, against a ledger made anew for each. */
class CassetteJudgeTest {
    private static final RecordId LEAD = RecordId.of("C", 2);

    private static Cassette of(Integer... teeth) {
        return new Cassette(List.of(teeth).stream().map(Cog::new).toList());
    }

    private static CassetteJudge judge(Scene scene, RecordId concept) {
        return CassetteJudge.of(scene.ledger(), concept, Optional.empty(), SprocketMass.ASSUMED);
    }

    @Test
    void movingFromCassetteToCassetteGivesWhatAFreshLedgerGives() {
        Scene sample = Scene.sample();
        CassetteJudge judge = judge(sample, LEAD);
        Random random = new Random(7);
        for (int round = 0; round < 12; round++) {
            TreeSet<Integer> teeth = new TreeSet<>(List.of(10, 40 + random.nextInt(12)));
            while (teeth.size() < 9 + round % 4) {
                teeth.add(11 + random.nextInt(30));
            }
            Judged judged = judge.judge(of(teeth.toArray(Integer[]::new)));
            Scene fresh = sample.at(judge.with(judged.cassette()));
            for (Judged.Held held : judged.held()) {
                if (!held.criterion().isWeight()) {
                    Verdict expected = fresh.verdict("criterion-verdict C-002 "
                            + held.criterion().requirement().id() + " criterion="
                            + held.criterion().criterion().id());
                    assertEquals(
                            expected,
                            held.verdict(),
                            () -> teeth + " " + held.criterion().name());
                }
            }
            Verdict riders = fresh.verdict("verdict-for-riders C-002 G-003 R-003");
            assertTrue(worse(judged.forRiders(RecordId.of("G", 3)).orElseThrow(), riders), teeth.toString());
        }
    }

    /** The worst verdict of a group is no better than that of one of its requirements. */
    private static boolean worse(Verdict worst, Verdict one) {
        return one.outcome() != Verdict.Outcome.MISSES || worst.outcome() == Verdict.Outcome.MISSES;
    }

    @Test
    void onlyWhatReadsTheCogsOrLimitsAWeightIsHeld() {
        List<String> names = judge(Scene.sample(), LEAD).judgedBy().stream()
                .map(OnCogs::name)
                .toList();
        assertTrue(names.containsAll(List.of("R-003.k1", "R-005.k1", "R-006.k1", "R-008.k1", "R-009.k1", "R-016.k1")));
        assertTrue(names.stream().noneMatch(List.of("R-010.k1", "R-018.k1", "R-047.k1")::contains), names.toString());
    }

    @Test
    void theWeightMovesByTheEstimateOfTheCogs() {
        Scene sample = Scene.sample();
        CassetteJudge judge = judge(sample, LEAD);
        double today = grams(judge.today());
        Cassette other = of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 46);
        double change = SprocketMass.ASSUMED.cogG(new Cog(46)) - SprocketMass.ASSUMED.cogG(new Cog(45));
        assertEquals(((Quantity) sample.answer("mass-predicted C-002")).value(), today, 1e-9);
        assertEquals(today + 1.08 * change, grams(judge.judge(other)), 1e-9); // 8 % on an estimate
    }

    private static double grams(Judged judged) {
        return judged.held().stream()
                .filter(held -> held.criterion().name().equals("R-009.k1"))
                .map(held -> ((Quantity) held.verdict().value()).value())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void excludedGearsAndSpacingsThatNoLongerFitAreLeftOut() {
        Scene scene = Scene.of(
                Scene.record("C-001", """
                        "rings": [36, 24], "cogs": [11, 13, 16], "cogSpacing_mm": [4, 3],
                        "excludedGears": [{"id": "a", "ring": 36, "cog": 16}, {"id": "b", "ring": 24, "cog": 11}]"""),
                Scene.requirement(
                        "R-001",
                        "\"criteria\": [{\"id\": \"k1\", \"figure\": \"gear-range\", \"comparator\": \"at-least\", \"target\": 300}]"));
        CassetteJudge judge = judge(scene, RecordId.of("C", 1));
        Definition changed = judge.with(of(11, 13, 15, 18));
        Concept concept = changed.get(RecordId.of("C", 1), Concept.class).orElseThrow();
        assertEquals(1, concept.excludedGears().size());
        assertEquals(3.5, concept.cogSpacing_mm().get(0).value());
        // highest 36/11, lowest 24/18; the excluded 24/11 is neither
        assertEquals(
                100 * (36 / 11.0) / (24 / 18.0),
                ((Quantity) judge.judge(of(11, 13, 15, 18))
                                .held()
                                .get(0)
                                .verdict()
                                .value())
                        .value(),
                1e-9);
    }

    @Test
    void anotherRingIsTakenInstead() {
        CassetteJudge judge =
                CassetteJudge.of(Scene.sample().ledger(), LEAD, Optional.of(List.of(30)), SprocketMass.ASSUMED);
        double cadence = ((Quantity) judge.today().held().get(0).verdict().value()).value();
        assertEquals(50.722 * 32 / 30, cadence, 0.005); // cadence on the 12 % climb, in proportion
    }

    @Test
    void aConceptThatIsNotThereIsSaidSo() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> judge(Scene.sample(), RecordId.of("C", 99)))
                .getMessage()
                .startsWith("there is no concept C-099"));
    }
}
