package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Missing;
import groupwright.definition.record.Entry;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One requirement over several criteria, rider groups and bikes. */
class JudgingTest {
    private static final String MASS = Scene.criterion("k1", "toy-mass", "at-most", 85, "");

    private static Scene scene(String requirement, Entry... others) {
        List<Entry> records = new ArrayList<>(List.of(others));
        records.add(Scene.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"));
        records.add(Scene.requirement("R-001", requirement));
        return Scene.of(records.toArray(Entry[]::new)).under(ToyFigures.catalogue());
    }

    private static Entry riders(String id, String mass) {
        return Scene.record(id, "\"riderMass_kg\": " + mass);
    }

    private static Entry bike(String id, double stay) {
        return Scene.record(id, "\"chainstay_mm\": " + stay);
    }

    private static String criteria(String... criteria) {
        return "\"criteria\": [" + String.join(", ", criteria) + "]";
    }

    /** From G-001, which meets, to G-005, which misses; each is worse than the one before. */
    private static Scene five(String named) {
        return scene(
                criteria(MASS) + ", \"riders\": [\"" + named.replace(" ", "\", \"") + "\"]",
                riders("G-001", "84.9"),
                riders("G-002", "{\"value\": 70, \"plusMinus\": 20}"),
                riders("G-003", "{\"value\": 89, \"plusMinus\": 5}"),
                Scene.record("G-004", "\"importance\": 5"),
                riders("G-005", "85.1"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        G-001 G-002 G-003 G-004 G-005, misses G-005 k1
        G-005 G-004 G-003 G-002 G-001, misses G-005 k1
        G-001 G-002 G-003 G-004,       missing input G-004 k1
        G-004 G-003 G-002 G-001,       missing input G-004 k1
        G-002 G-001 G-003,             'misses, too close to call G-003 k1'
        G-002 G-001,                   'meets, too close to call G-002 k1'
        G-001 G-002,                   'meets, too close to call G-002 k1'
        G-001,                         meets G-001 k1
        """)
    void aCertainMissIsWorseThanMissingInputAndThatWorseThanWhatIsTooClose(String named, String worst) {
        Scene scene = five(named);
        assertEquals(worst, scene.worst("criterion-verdict C-001 R-001 criterion=k1"));
        assertEquals(worst, scene.worst("verdict C-001 R-001"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        G-001, meets G-001 k1
        G-002, 'meets, too close to call G-002 k1'
        G-003, 'misses, too close to call G-003 k1'
        G-004, missing input G-004 k1
        G-005, misses G-005 k1
        """)
    void theVerdictForOneRiderGroupLooksAtNoOther(String riders, String worst) {
        String named = "G-001 G-002 G-003 G-004 G-005";
        assertEquals(worst, five(named).worst("verdict-for-riders C-001 " + riders + " R-001"));
    }

    @Test
    void theSmallestMarginIsTheWorst() {
        Scene scene = scene(criteria(MASS), riders("G-001", "84"), riders("G-002", "84.5"), riders("G-003", "20"));
        assertEquals("meets G-002 k1", scene.worst("verdict C-001 R-001"));
        assertEquals(0.5, scene.verdict("verdict C-001 R-001").margin());
        assertEquals(
                "misses G-003 k1",
                scene.with(riders("G-002", "86")).with(riders("G-003", "87")).worst("verdict C-001 R-001"));
    }

    @Test
    void ofEquallyBadOnesTheSmallestIdIsNamed() {
        Scene scene = scene(
                criteria(MASS) + ", \"riders\": [\"G-010\", \"G-009\", \"G-1000\"]",
                riders("G-1000", "90"),
                riders("G-010", "90"),
                riders("G-009", "90"));
        assertEquals("misses G-009 k1", scene.worst("verdict C-001 R-001"));
        Scene bikes = scene(
                criteria(Scene.criterion("k1", "toy-stay", "at-most", 400, ""))
                        + ", \"bikes\": [\"B-2000\", \"B-030\"]",
                bike("B-030", 420),
                bike("B-2000", 420));
        assertEquals("misses C-001 B-030 k1", bikes.worst("verdict C-001 R-001"));
        Scene nothing = scene(
                criteria(MASS), Scene.record("G-002", "\"importance\": 5"), Scene.record("G-001", "\"importance\": 5"));
        assertEquals("missing input G-001 k1", nothing.worst("verdict C-001 R-001"));
    }

    @Test
    void theWorstPairOfRidersAndBikesIsNamed() {
        Scene scene = scene(
                criteria(Scene.criterion("k1", "toy-both", "at-most", 540, "")),
                riders("G-001", "90"),
                riders("G-002", "100"),
                bike("B-001", 430),
                bike("B-002", 445));
        assertEquals("misses G-002 B-002 k1", scene.worst("verdict C-001 R-001"));
        assertEquals(-5, scene.verdict("verdict C-001 R-001").margin());
        assertEquals("meets G-001 B-002 k1", scene.worst("verdict-for-riders C-001 G-001 R-001"));
    }

    @Test
    void ofSeveralCriteriaTheWorstByPercentIsNamed() {
        Scene scene = scene(
                criteria(
                        Scene.criterion("k1", "toy-mass", "at-most", 85, ""), // 2 of 85 over: 2 %
                        Scene.criterion("k2", "gears", "at-least", 3, ""), // 1 of 3 short: 33 %
                        Scene.criterion("k3", "gears", "at-least", 2, "")),
                riders("G-001", "87"));
        assertEquals("misses C-001 k2", scene.worst("verdict C-001 R-001"));
        assertEquals("misses G-001 k1", scene.worst("criterion-verdict C-001 R-001 criterion=k1"));
        assertEquals("meets C-001 k3", scene.worst("criterion-verdict C-001 R-001 criterion=k3"));
        Scene twice = scene(criteria(
                Scene.criterion("k2", "gears", "at-least", 2, ""), Scene.criterion("k1", "gears", "at-least", 2, "")));
        assertEquals("meets C-001 k1", twice.worst("verdict C-001 R-001"));
    }

    @Test
    void whatIsRetiredIsLeftOut() {
        Entry gone = Scene.record("G-002", "\"riderMass_kg\": 200, \"retired\": \"no such riders\"");
        Scene all = scene(criteria(MASS), riders("G-001", "80"), gone);
        assertEquals("meets G-001 k1", all.worst("verdict C-001 R-001"));
        Scene named = scene(criteria(MASS) + ", \"riders\": [\"G-001\", \"G-002\"]", riders("G-001", "80"), gone);
        assertEquals("meets G-001 k1", named.worst("verdict C-001 R-001"));
        Scene bikes = scene(
                criteria(Scene.criterion("k1", "toy-stay", "at-most", 440, "")),
                bike("B-001", 430),
                Scene.record("B-002", "\"chainstay_mm\": 450, \"retired\": \"off the list\""));
        assertEquals("meets C-001 B-001 k1", bikes.worst("verdict C-001 R-001"));
        assertEquals("misses C-001 B-002 k1", bikes.with("B-002.retired", "").worst("verdict C-001 R-001"));
    }

    @Test
    void withNobodyToMeasureForTheRemedySaysSo() {
        String expected = "R-001.criteria.k1.figure: there is no rider group or bike to measure it for; add one";
        assertEquals(expected, scene(criteria(MASS)).missing("verdict C-001 R-001"));
        Entry gone = Scene.record("G-001", "\"retired\": \"gone\"");
        assertEquals(expected, scene(criteria(MASS), gone).missing("verdict C-001 R-001"));
    }

    @Test
    void aRequirementWithoutCriteriaIsMissingThem() {
        Scene scene = scene("\"answers\": []", riders("G-001", "80"));
        String expected = "R-001.criteria: nothing says how it is measured; choose a figure and a target";
        assertEquals(expected, scene.missing("verdict C-001 R-001"));
        assertEquals(expected, scene.missing("verdict-for-riders C-001 G-001 R-001"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        gear-rnge          | .criteria.k1.figure: there is no figure "gear-rnge"; did you mean gear-range?
        softness-of-saddle | .criteria.k1.figure: there is no figure "softness-of-saddle"; choose one
        toy-list           | .criteria.k1.figure: the figure gives a list of numbers; choose one that gives one number
        toy-word           | .criteria.k1.figure: the figure gives no number; choose one that gives one number
        coverage           | .criteria.k1.figure: coverage speaks of the project, not the product; choose another figure
        verdict            | .criteria.k1.figure: verdict speaks of the project, not the product; choose another figure
        claim-state        | .criteria.k1.figure: claim-state speaks of the project, not the product; choose another figure
        part-mass-basic    | .criteria.k1.figure: part-mass-basic is about one record, not the concept; choose a figure about concepts
        """)
    void aFigureThatCannotBeMeasuredIsMissingWithARemedy(String figure, String expected) {
        Scene scene = scene(criteria(Scene.criterion("k1", figure, "at-least", 1, "")));
        assertEquals("R-001" + expected, scene.missing("criterion-verdict C-001 R-001 criterion=k1"));
        assertEquals("R-001" + expected, scene.missing("verdict C-001 R-001"));
        assertEquals("k1", scene.verdict("verdict C-001 R-001").criterion());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        largest-step from-teth=14     | from-teth: is no parameter of largest-step; use from-teeth
        largest-step from-teeth=many  | from-teeth: "many" is no whole number; write for example from-teeth=
        test-result                   | quantity: is not given; add quantity=
        toy-stay steep=1              | steep: is no parameter of toy-stay; use none; it has no parameters
        """)
    void badParametersAreMissingWithTheReason(String figure, String expected) {
        Scene scene = scene(criteria(Scene.criterion("k1", figure, "at-least", 1, "")), bike("B-001", 430));
        String missing = scene.missing("verdict C-001 R-001");
        assertTrue(missing.startsWith("R-001.criteria.k1.parameters: " + expected), missing);
    }

    @Test
    void whatIsMissingBehindTheFigureIsNamedWithItsOwnAddress() {
        Scene scene = scene(criteria(MASS), Scene.record("G-001", "\"importance\": 5"));
        assertEquals("G-001.riderMass_kg: fill it in", scene.missing("verdict C-001 R-001"));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
        riders | B-001 | toy-mass | R-001.riders: B-001 is no rider group; name one like G-001
        bikes  | N-001 | toy-stay | R-001.bikes: N-001 is no bike; name one like B-001
        riders | G-777 | toy-mass | G-777: there is no rider group G-777; add it or name another
        """)
    void namesThatLeadNowhereAreMissing(String field, String id, String figure, String expected) {
        Scene scene = scene(
                criteria(Scene.criterion("k1", figure, "at-least", 1, "")) + ", \"" + field + "\": [\"" + id + "\"]",
                bike("B-001", 430));
        assertEquals(expected, scene.missing("verdict C-001 R-001"));
    }

    @Test
    void aCriterionThatIsNotThereHasNoVerdict() {
        var answer = (Missing) scene(criteria(MASS)).answer("criterion-verdict C-001 R-001 criterion=k9");
        assertEquals("there is no criterion k9", answer.inputs().get(0).remedy());
    }

    @Test
    void anotherConceptIsJudgedByItsOwnNumbers() {
        Scene scene = scene(
                criteria(Scene.criterion("k1", "gear-range", "at-least", 210, "")),
                Scene.record("C-002", "\"rings\": [30], \"cogs\": [10, 22]"));
        assertEquals("misses C-001 k1", scene.worst("verdict C-001 R-001"));
        assertEquals("meets C-002 k1", scene.worst("verdict C-002 R-001"));
        assertEquals("missing input C-003 k1", scene.worst("verdict C-003 R-001"));
    }
}
