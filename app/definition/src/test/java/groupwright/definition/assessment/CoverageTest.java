package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The ladder of one requirement, and the sums over all of them. */
class CoverageTest {
    private static final RecordId CONCEPT = Scene.id("C-001");
    private static final Entry GEARS = Scene.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"); // range 200 %
    private static final String MEETS = Scene.criterion("k1", "gear-range", "at-least", 150, "");
    private static final String MISSES = Scene.criterion("k2", "gear-range", "at-least", 250, "");
    private static final String UNKNOWN = Scene.criterion("k3", "beauty", "at-least", 1, "");
    private static final String FORCE = Scene.criterion("k4", "test-result quantity=force", "at-most", 22, "");

    private static String with(String state, String result, String... criteria) {
        return """
                "state": "%s", "criteria": [%s], "results": [%s]""".formatted(state, String.join(", ", criteria), result);
    }

    private static String result(String concept, String value) {
        return """
                {"id": "t1", "concept": "%s", "quantity": "force", "value": %s}""".formatted(concept, value);
    }

    private static String ladder(Scene scene) {
        return ValueText.of(scene.answer("ladder C-001 R-001"));
    }

    private static Scene one(String fields) {
        return Scene.of(GEARS, Scene.requirement("R-001", fields));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        nothing measured                  | 1 0 0 0
        one figure unknown                | 1 0 0 0
        missing test                      | 1 1 0 0
        result of another concept         | 1 1 0 0
        misses                            | 1 1 0 0
        one of two misses                 | 1 1 0 0
        result misses                     | 1 1 0 0
        result too close to call          | 1 1 0 0
        result meets, analysis misses     | 1 1 0 0
        meets by analysis                 | 1 1 1 0
        meets by analysis, other result   | 1 1 1 0
        result meets                      | 1 1 1 1
        result and analysis meet          | 1 1 1 1
        """)
    void aRequirementClimbsRungByRung(String what, String rungs) {
        String fields = switch (what) {
            case "nothing measured" -> with("agreed", "");
            case "one figure unknown" -> with("agreed", "", MEETS, UNKNOWN);
            case "missing test" -> with("agreed", "", FORCE);
            case "result of another concept" -> with("agreed", result("C-002", "20"), FORCE);
            case "misses" -> with("agreed", "", MISSES);
            case "one of two misses" -> with("agreed", "", MEETS, MISSES);
            case "result misses" -> with("agreed", result("C-001", "23"), FORCE);
            case "result too close to call" ->
                with("agreed", result("C-001", "{\"value\": 21, \"plusMinus\": 2}"), FORCE);
            case "result meets, analysis misses" -> with("agreed", result("C-001", "20"), FORCE, MISSES);
            case "meets by analysis" -> with("agreed", "", MEETS);
            case "meets by analysis, other result" -> with("agreed", result("C-001", "20"), MEETS);
            case "result meets" -> with("agreed", result("C-001", "20"), FORCE);
            case "result and analysis meet" -> with("draft", result("C-001", "20"), MEETS, FORCE);
            default -> throw new AssertionError(what);
        };
        String[] is = rungs.split(" ");
        assertEquals("stated=%s measurable=%s calculated=%s tested=%s".formatted((Object[]) is), ladder(one(fields)));
    }

    @Test
    void parkedAndRetiredRequirementsStandOnNoRung() {
        Scene parked = one(with("parked", "", MEETS));
        assertEquals("", ladder(parked));
        assertEquals(
                Optional.empty(),
                parked.assessment().standing(Scene.id("R-001"), CONCEPT).rung());
        Scene retired = one(with("agreed", "", MEETS) + ", \"retired\": \"asked no more\"");
        assertEquals("", ladder(retired));
        Map<Rung, Integer> none = Map.of(Rung.STATED, 0, Rung.MEASURABLE, 0, Rung.CALCULATED, 0, Rung.TESTED, 0);
        assertEquals(none, parked.assessment().coverage(CONCEPT));
        assertEquals(none, retired.assessment().coverage(CONCEPT));
    }

    @Test
    void theStandingNamesTheHighestRung() {
        var standing =
                one(with("agreed", result("C-001", "20"), FORCE)).assessment().standing(Scene.id("R-001"), CONCEPT);
        assertEquals(Optional.of(Rung.TESTED), standing.rung());
        assertEquals("meets", standing.verdict().words());
        assertEquals(
                Optional.of(Rung.MEASURABLE),
                one(with("agreed", "", MISSES))
                        .assessment()
                        .standing(Scene.id("R-001"), CONCEPT)
                        .rung());
    }

    /** How a random requirement was made: the rungs it must stand on, and whom it is about. */
    private record Made(int rungs, List<String> riders) {}

    private static Entry random(Random random, String id, Map<String, Made> made) {
        int rungs = random.nextInt(5); // 0 counts for nothing
        List<String> riders = new ArrayList<>();
        for (String group : List.of("G-001", "G-002")) {
            if (random.nextInt(3) == 0) {
                riders.add(group);
            }
        }
        made.put(id, new Made(rungs, riders));
        boolean odd = random.nextBoolean();
        String fields = switch (rungs) {
            case 0 -> odd ? with("parked", "", MEETS) : with("agreed", "", MEETS) + ", \"retired\": \"gone\"";
            case 1 -> odd ? with("draft", "") : with("agreed", "", MEETS, UNKNOWN);
            case 2 -> odd ? with("draft", "", MEETS, MISSES) : with("agreed", result("C-002", "1"), FORCE);
            case 3 -> with(odd ? "draft" : "agreed", "", MEETS);
            default ->
                odd ? with("draft", result("C-001", "20"), FORCE, MEETS) : with("agreed", result("C-001", "2"), FORCE);
        };
        String named = riders.isEmpty() ? "" : "\"" + String.join("\", \"", riders) + "\"";
        return Scene.requirement(id, fields + ", \"riders\": [" + named + "]");
    }

    private static void assertCounted(Assessment assessment, Map<String, Made> made, long seed) {
        for (Rung rung : Rung.values()) {
            String where = rung + ", seed " + seed;
            long all =
                    made.values().stream().filter(m -> m.rungs > rung.ordinal()).count();
            assertEquals(all, assessment.coverage(CONCEPT).get(rung).longValue(), where);
            for (String riders : List.of("G-001", "G-002")) {
                long about = made.values().stream()
                        .filter(m -> m.rungs > rung.ordinal())
                        .filter(m -> m.riders.isEmpty() || m.riders.contains(riders))
                        .count();
                int counted = assessment.coverage(CONCEPT, Scene.id(riders)).get(rung);
                assertEquals(about, counted, riders + ", " + where);
            }
        }
    }

    /** The sums are kept in a tree over the numbers of the ids; the recount is not. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void coverageIsARecountAfterEveryEdit(long seed) {
        Random random = new Random(seed);
        Map<String, Made> made = new TreeMap<>();
        Scene scene =
                Scene.of(GEARS, Scene.record("G-001", "\"importance\": 5"), Scene.record("G-002", "\"importance\": 5"));
        Definition definition = scene.definition();
        for (int i = random.nextInt(80); i > 0; i--) {
            definition = definition.with(random(random, "R-%03d".formatted(random.nextInt(5000)), made));
        }
        scene.ledger().moveTo(definition);
        assertCounted(scene.assessment(), made, seed);
        for (int edit = 0; edit < 25; edit++) {
            String id = random.nextBoolean() || made.isEmpty()
                    ? "R-%03d".formatted(random.nextInt(5000))
                    : List.copyOf(made.keySet()).get(random.nextInt(made.size()));
            if (random.nextInt(4) == 0) {
                made.remove(id);
                definition = definition.without(Scene.id(id));
            } else {
                definition = definition.with(random(random, id, made));
            }
            scene.ledger().moveTo(definition);
            assertCounted(scene.assessment(), made, seed);
        }
    }

    @Test
    void answersCountsTheRequirementsInUse() {
        Scene scene = Scene.of(
                Scene.record("N-001", "\"words\": \"up\", \"source\": \"ride\", \"importance\": \"must\""),
                Scene.record("N-002", "\"words\": \"down\", \"source\": \"ride\", \"importance\": \"must\""),
                Scene.record(
                        "N-003",
                        "\"words\": \"old\", \"source\": \"ride\", \"importance\": \"must\", \"retired\": \"gone\""),
                Scene.requirement("R-001", "\"answers\": [\"N-001\"]"),
                Scene.requirement("R-002", "\"answers\": [\"N-001\", \"N-001\"], \"state\": \"parked\""),
                Scene.requirement("R-003", "\"answers\": [\"N-001\", \"N-002\"], \"retired\": \"gone\""),
                Scene.requirement("R-004", "\"answers\": []"));
        assertEquals("2", ValueText.of(scene.answer("answers N-001")));
        assertEquals("0", ValueText.of(scene.answer("answers N-002")));
        assertEquals(
                List.of("N-002"),
                scene.assessment().unansweredNeeds().stream()
                        .map(Need::id)
                        .map(RecordId::text)
                        .toList());
        assertEquals(
                List.of("R-004"),
                scene.assessment().requirementsWithoutNeed().stream()
                        .map(Requirement::id)
                        .map(RecordId::text)
                        .toList());
        scene.ledger().moveTo(scene.with("R-003.retired", "").definition());
        assertEquals("3", ValueText.of(scene.answer("answers N-001")));
        assertEquals("1", ValueText.of(scene.answer("answers N-002")));
    }
}
