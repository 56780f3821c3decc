package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Word;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Support;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every state of a claim, and the way into it. */
class ClaimStateTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);

    private static Scene scene(String claim) {
        return Scene.of(
                Scene.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"), // range 200 %
                Scene.record("C-002", "\"rings\": [40], \"cogs\": [10, 30]"), // range 300 %
                Scene.requirement(
                        "R-001", "\"criteria\": [" + Scene.criterion("k1", "gear-range", "at-least", 150, "") + "]"),
                Scene.record("K-001", claim));
    }

    private static String claim(String wording, String supports, String requirements) {
        return """
                "wording": "%s", "supports": [%s], "requirements": [%s]""".formatted(wording, supports, requirements);
    }

    private static String support(String figure, String limit) {
        return "{\"id\": \"s1\", \"figure\": \"" + figure + "\"" + (limit.isEmpty() ? "" : ", " + limit) + "}";
    }

    private static final String AT_LEAST_150 = "\"comparator\": \"at-least\", \"limit\": 150, \"unit\": \"%\"";

    /** A wide range, approved today, on all three legs. */
    private static Scene approved() {
        return approve(
                scene(claim("{{gear-range lead}} of range", support("gear-range C-001", AT_LEAST_150), "\"R-001\"")));
    }

    static Scene approve(Scene scene) {
        return scene.with(Approving.approve(scene.ledger(), Scene.id("K-001"), "marketing lead", DAY));
    }

    private static void assertStands(ClaimState state, String detail, Scene scene) {
        assertEquals(new Word(state.word(), detail), scene.claim("K-001"));
    }

    @Test
    void approvedAndUnchangedItHolds() {
        assertStands(ClaimState.HOLDS, "", approved());
        assertStands(ClaimState.HOLDS, "", approved().with("C-001.title", "another name"));
    }

    @Test
    void notApprovedItIsProposedAndSaysWhatIsLacking() {
        assertStands(ClaimState.PROPOSED, "", scene(claim("Wide", support("gear-range C-001", ""), "")));
        assertStands(
                ClaimState.PROPOSED,
                "gear-range C-009 has no answer: C-009, there is no concept C-009; add it or name another",
                scene(claim("Wide", support("gear-range C-009", ""), "")));
    }

    @Test
    void onNothingItIsUnsupported() {
        assertStands(ClaimState.UNSUPPORTED, "it rests on nothing", scene(claim("Silent", "", "")));
    }

    @Test
    void anApprovedClaimWhoseSupportIsMissingIsUnsupported() {
        assertStands(
                ClaimState.UNSUPPORTED,
                "verdict C-001 R-001 is missing input: R-001.criteria",
                approved().with("R-001.criteria", List.of()));
        Word gone = approved().without("C-001").claim("K-001");
        assertEquals("unsupported", gone.word());
        assertTrue(gone.detail().startsWith("gear-range C-001 has no answer: C-001, "), gone.detail());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        gear-rnge C-001         | support s1: there is no figure "gear-rnge"; did you mean gear-range?
        gear-range              | support s1: is asked about nothing; name one concept (C-…)
        gear-range C-001 C-002  | support s1: two records of one kind, C-001 and C-002; name one; name each kind once
        coverage C-001          | support s1: coverage speaks of the project, not the product; rest on another figure
        gear-range C-001 wide=1 | support s1: is no parameter of gear-range; use none; it has no parameters
        """)
    void aSupportThatCannotBeReadIsBroken(String figure, String detail) {
        Scene scene = scene(claim("Wide", support(figure, ""), ""));
        assertStands(ClaimState.PROPOSED, detail, scene);
        assertStands(
                ClaimState.UNSUPPORTED,
                detail,
                approved()
                        .with("K-001.supports.s1.figure", figure)
                        .with("K-001.wording", "Wide")
                        .with("K-001.requirements", List.<RecordId>of()));
    }

    @Test
    void aWordingThatCannotBeReadIsBroken() {
        assertStands(
                ClaimState.PROPOSED,
                "the wording: {{ at character 6 is not closed; close it with }}",
                scene(claim("Wide {{gear-range C-001", "", "")));
    }

    @Test
    void namesOfAnotherKindBreakAClaimAndNothingElse() {
        assertStands(
                ClaimState.PROPOSED,
                "there is no verdict on N-001 for C-001; name a requirement, and a concept as leadConcept in project.json",
                scene(claim("Wide", "", "\"N-001\"")));
        Scene led = scene(claim("Wide", "", "\"R-001\""))
                .with(Scene.record("project", "\"name\": \"Test\", \"leadConcept\": \"R-001\""));
        assertEquals(ClaimState.PROPOSED, led.assessment().claims().get(0).state());
        Scene leaderless = scene(claim("Wide", "", "\"R-001\"")).with(Scene.record("project", "\"name\": \"Test\""));
        assertStands(
                ClaimState.PROPOSED, "the project names no lead concept; set leadConcept in project.json", leaderless);
    }

    @Test
    void anotherValueIsAChange() {
        assertStands(
                ClaimState.CHANGED_SINCE_APPROVAL,
                "gear-range C-001 was 200 %, is 220 %",
                approved().with("C-001.cogs", List.of(15, 33)));
        assertStands(
                ClaimState.HOLDS,
                "",
                approved().with("C-001.cogs", List.of(15, 33)).with("C-001.cogs", List.of(15, 30)));
    }

    @Test
    void whatIsNoLongerTrueSaysSoFirst() {
        assertStands(
                ClaimState.CHANGED_SINCE_APPROVAL,
                "gear-range C-001 is 140 %, not at least 150 %; R-001 misses; gear-range C-001 was 200 %, is 140 %;"
                        + " verdict C-001 R-001 was meets, is misses",
                approved().with("C-001.cogs", List.of(15, 21)));
    }

    @Test
    void aLimitBrokenByItselfIsAChange() {
        assertStands(
                ClaimState.CHANGED_SINCE_APPROVAL,
                "gear-range C-001 is 200 %, not at least 250 %",
                approved().with("K-001.supports.s1.limit", 250.0));
    }

    @Test
    void anotherWordingIsAChange() {
        assertStands(
                ClaimState.CHANGED_SINCE_APPROVAL,
                "the wording was \"{{gear-range lead}} of range\"",
                approved().with("K-001.wording", "{{gear-range lead}} of range, for ever"));
    }

    @Test
    void moreOrLessToRestOnIsAChange() {
        assertStands(
                ClaimState.CHANGED_SINCE_APPROVAL,
                "gears C-001 was not part of the approval",
                approved()
                        .with(
                                "K-001.supports",
                                List.of(new Support("s2", "gears C-001", Optional.empty(), Optional.empty(), ""))));
        assertStands(
                ClaimState.CHANGED_SINCE_APPROVAL,
                "verdict C-001 R-001 was part of the approval and supports it no more",
                approved().with("K-001.requirements", List.<RecordId>of()));
    }

    @Test
    void anotherLeadConceptIsAChange() {
        Word word = approved()
                .with(Scene.record("project", "\"name\": \"Test\", \"leadConcept\": \"C-002\""))
                .claim("K-001");
        assertEquals("changed since approval", word.word());
        assertEquals(
                "gear-range C-002 was not part of the approval; verdict C-002 R-001 was not part of the approval;"
                        + " verdict C-001 R-001 was part of the approval and supports it no more",
                word.detail());
    }

    @Test
    void aVerdictThatBecomesUncertainIsAChange() {
        Scene scene = approve(Scene.of(
                Scene.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"),
                Scene.requirement(
                        "R-001", """
                        "criteria": [%s], "results": [{"id": "t1", "concept": "C-001", "quantity": "q", "value": 21}]""".formatted(Scene.criterion("k1", "test-result quantity=q", "at-most", 22, ""))),
                Scene.record("K-001", claim("Light to shift", "", "\"R-001\""))));
        assertStands(ClaimState.HOLDS, "", scene);
        assertStands(
                ClaimState.CHANGED_SINCE_APPROVAL,
                "verdict C-001 R-001 was meets, is meets, too close to call",
                scene.with("R-001.results.t1.value", new Amount(21, 2)));
    }

    private static Scene teeth(String rings) {
        Entry concept = Scene.record("C-001", "\"rings\": [" + rings + "], \"cogs\": [15, 30]");
        return Scene.of(concept, Scene.record("K-001", claim("{{toy-teeth C-001}} teeth", "", "")))
                .under(ToyFigures.catalogue());
    }

    @Test
    void aNewerFormulaOverTheSameInputsRecalculates() {
        Scene then = approve(teeth("30"));
        assertStands(ClaimState.HOLDS, "", then);
        assertStands(
                ClaimState.RECALCULATED,
                "toy-teeth C-001 was 30 teeth, is 33 teeth",
                then.under(ToyFigures.catalogue(2, 1.1)));
    }

    @Test
    void aNewerFormulaWithTheSameAnswerStillHolds() {
        assertStands(ClaimState.HOLDS, "", approve(teeth("30")).under(ToyFigures.catalogue(2, 1)));
    }

    @Test
    void aNewerFormulaOverOtherInputsIsAChange() {
        assertStands(
                ClaimState.CHANGED_SINCE_APPROVAL,
                "toy-teeth C-001 was 30 teeth, is 35.2 teeth",
                approve(teeth("30")).with("C-001.rings", List.of(32)).under(ToyFigures.catalogue(2, 1.1)));
    }

    @Test
    void differencesWithinTheResolutionAreNone() {
        Scene then = approve(teeth("30")); // toy-teeth is good for half a tooth
        assertStands(ClaimState.HOLDS, "", then.under(ToyFigures.catalogue(2, 1 + 0.5 / 30)));
        assertStands(ClaimState.HOLDS, "", then.under(ToyFigures.catalogue(1, 1 - 0.5 / 30)));
        assertEquals(
                "recalculated",
                then.under(ToyFigures.catalogue(2, 1.02)).claim("K-001").word());
        assertEquals(
                "changed since approval",
                then.under(ToyFigures.catalogue(1, 1.02)).claim("K-001").word());
    }

    @Test
    void takenBackOrRetiredItIsWithdrawnWithTheReason() {
        Scene scene = approved();
        Claim claim = (Claim) scene.definition().get(Scene.id("K-001")).orElseThrow();
        assertStands(
                ClaimState.WITHDRAWN,
                "nobody believes it",
                scene.with(Approving.withdraw(claim, "nobody believes it")));
        assertStands(ClaimState.WITHDRAWN, "said elsewhere", scene.with("K-001.retired", "said elsewhere"));
    }

    @Test
    void theAssessmentListsAllClaimsInOrder() {
        Scene scene = approved()
                .with(Scene.record("K-1000", "\"wording\": \"Silent\""))
                .with(Scene.record("K-002", "\"wording\": \"Quick\""));
        assertEquals(
                List.of("K-001 HOLDS", "K-002 UNSUPPORTED", "K-1000 UNSUPPORTED"),
                scene.assessment().claims().stream()
                        .map(standing -> standing.claim().id() + " " + standing.state())
                        .toList());
    }
}
