package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.definition.record.Approval;
import groupwright.definition.record.ApprovedAnswer;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Invalid;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Approving a claim and taking it back. */
class ApprovingTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);

    private static Scene scene(String claim) {
        return Scene.of(
                Scene.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"),
                Scene.record("G-001", "\"rollOut_mm\": {\"value\": 2000, \"plusMinus\": 20}, \"cadenceMost_rpm\": 100"),
                Scene.requirement("R-001", "\"answers\": []"),
                Scene.requirement(
                        "R-002", "\"criteria\": [" + Scene.criterion("k1", "gear-range", "at-least", 250, "") + "]"),
                Scene.record("K-001", "\"wording\": \"Fast\", " + claim));
    }

    private static Claim claim(Scene scene) {
        return (Claim) scene.definition().get(Scene.id("K-001")).orElseThrow();
    }

    private static Claim approve(Scene scene) {
        return Approving.approve(scene.ledger(), Scene.id("K-001"), "marketing lead", DAY);
    }

    @Test
    void storesEveryAnswerWithTheInputsBehindItByAddress() {
        Scene scene = scene("""
                "supports": [{"id": "s1", "figure": "spin-out-speed C-001 G-001", "comparator": "at-least", "limit": 20,
                "unit": "km/h"}, {"id": "s2", "figure": "gears C-001"}]""");
        Approval approval = approve(scene).approvals().get(0);
        assertEquals("a1", approval.id());
        assertEquals("marketing lead", approval.by());
        assertEquals(DAY, approval.date());
        assertEquals("Fast", approval.wording());
        // 2 m · 30/15 · 100 rpm · 60/1000 = 24 km/h
        assertEquals(
                List.of(
                        new ApprovedAnswer(
                                "v1",
                                "spin-out-speed C-001 G-001",
                                "24",
                                "km/h",
                                1,
                                List.of(
                                        "C-001.cogs = 15, 30",
                                        "C-001.excludedGears = ",
                                        "C-001.rings = 30",
                                        "G-001.cadenceMost_rpm = 100",
                                        "G-001.rollOut_mm = 2000 ± 20")),
                        new ApprovedAnswer(
                                "v2",
                                "gears C-001",
                                "2",
                                "",
                                1,
                                List.of("C-001.cogs = 15, 30", "C-001.excludedGears = ", "C-001.rings = 30"))),
                approval.answers());
    }

    @Test
    void theClaimIsApprovedAndKeepsEarlierApprovals() {
        Scene once = scene("\"supports\": [{\"id\": \"s1\", \"figure\": \"gears C-001\"}]");
        Claim first = approve(once);
        assertEquals(Claim.State.APPROVED, first.state());
        Claim second = approve(once.with(first).with("C-001.cogs", List.of(15, 20, 30)));
        assertEquals(
                List.of("a1", "a2"),
                second.approvals().stream().map(Approval::id).toList());
        assertEquals(first.approvals().get(0), second.approvals().get(0));
        assertEquals("3", second.approvals().get(1).answers().get(0).value());
    }

    @Test
    void aNewApprovalTakesAnIdThatIsFree() {
        Claim second = approve(scene("""
                "supports": [{"id": "s1", "figure": "gears C-001"}], "state": "approved", "approvals":
                [{"id": "a2", "by": "sales", "date": "2026-01-01", "wording": "Fast"}]"""));
        assertEquals(
                List.of("a2", "a3"),
                second.approvals().stream().map(Approval::id).toList());
    }

    @Test
    void aWithdrawnClaimCanBeApprovedAgain() {
        Scene scene = scene("\"supports\": [{\"id\": \"s1\", \"figure\": \"gears C-001\"}]");
        Scene withdrawn = scene.with(Approving.withdraw(claim(scene), "too early"));
        Claim again = approve(withdrawn);
        assertEquals(Claim.State.APPROVED, again.state());
        assertEquals("", again.stateReason());
        assertEquals("holds", withdrawn.with(again).claim("K-001").word());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # supports | requirements | the sentence
        | | supports: K-001 rests on nothing; name a figure or a requirement it rests on
        "figure": "gear-rnge C-001" | | supports: support s1: there is no figure "gear-rnge"; did you mean gear-range?; mend it before approving K-001
        "figure": "gears C-009" | | supports: gears C-009 has no answer: missing C-009; fill that in first
        | "R-001" | supports: verdict C-001 R-001 has no answer: missing input; fill that in first
        | "R-002" | supports: R-002 misses; change the wording or the limit before approving K-001
        "figure": "gears C-001", "comparator": "at-least", "limit": 3 | | supports: gears C-001 is 2, not at least 3; change the wording or the limit before approving K-001
        "figure": "gears C-001", "comparator": "at-most", "limit": 1 | | supports: gears C-001 is 2, not at most 1; change the wording or the limit before approving K-001
        "figure": "gears C-001", "comparator": "at-most", "limit": 9, "unit": "N" | | supports: gears C-001 is 2, not at most 9 N; change the wording or the limit before approving K-001
        """)
    void refusesWhatCannotBeSaidInOneSentence(String support, String requirement, String sentence) {
        Scene scene = scene("\"supports\": [%s], \"requirements\": [%s]"
                .formatted(
                        support == null ? "" : "{\"id\": \"s1\", " + support + "}",
                        requirement == null ? "" : requirement));
        assertEquals(sentence, assertThrows(Invalid.class, () -> approve(scene)).getMessage());
    }

    @Test
    void refusesARetiredClaimAndOneThatIsNotThere() {
        Scene retired = scene(
                "\"supports\": [{\"id\": \"s1\", \"figure\": \"gears C-001\"}], \"retired\": \"said better in K-002\"");
        assertEquals(
                "retired: K-001 is no longer used: said better in K-002; approve another claim",
                assertThrows(Invalid.class, () -> approve(retired)).getMessage());
        assertEquals(
                "there is no claim K-007",
                assertThrows(Invalid.class, () -> Approving.approve(retired.ledger(), Scene.id("K-007"), "sales", DAY))
                        .wrong());
    }

    @Test
    void takingBackNeedsAReasonAndKeepsTheApprovals() {
        Scene scene = scene("\"supports\": [{\"id\": \"s1\", \"figure\": \"gears C-001\"}]");
        Claim approved = approve(scene);
        Invalid refused = assertThrows(Invalid.class, () -> Approving.withdraw(approved, " "));
        assertEquals(
                "stateReason: a withdrawn claim needs a reason; write why K-001 is taken back", refused.getMessage());
        Claim withdrawn = Approving.withdraw(approved, "not proven");
        assertEquals(Claim.State.WITHDRAWN, withdrawn.state());
        assertEquals("not proven", withdrawn.stateReason());
        assertEquals(approved.approvals(), withdrawn.approvals());
        assertEquals(approved.supports(), withdrawn.supports());
    }
}
