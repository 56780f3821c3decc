package groupwright.workbench.claims;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Approval;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Definition;
import groupwright.workbench.Components;
import groupwright.workbench.LedgerBench;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

class ClaimDecisionsTest {
    private final LedgerBench bench = new LedgerBench(Locale.UK, Sample.definition());

    private interface Act {
        void on(ClaimsPlace place);
    }

    private void with(Act act) throws Exception {
        EventQueue.invokeAndWait(() -> {
            Look.setUp(Theme.LIGHT, 1);
            act.on(ClaimsPicturesTest.place(bench));
        });
    }

    private static Component named(ClaimsPlace place, String name) {
        return Components.named((Container) place.component(), name).orElseThrow();
    }

    private static void press(ClaimsPlace place, String name) {
        Component found = named(place, name);
        if (found instanceof AbstractButton button) {
            button.doClick(0);
        } else {
            Components.click(found);
        }
    }

    private static JTextField field(ClaimsPlace place, String name) {
        return Components.all((Container) place.component()).stream()
                .filter(child -> child instanceof JTextField
                        && name.equals(child.getAccessibleContext().getAccessibleName()))
                .map(JTextField.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private Claim claim(String id) {
        return bench.definition().get(Sample.id(id), Claim.class).orElseThrow();
    }

    private String refusal(ClaimsPlace place) {
        return named(place, "claims.refusal").getAccessibleContext().getAccessibleName();
    }

    private void approve(ClaimsPlace place, String id, String by) {
        place.reveal(Address.of(Sample.id(id)));
        press(place, "claims.approve");
        field(place, "By whom, as a role").setText(by);
        press(place, "claims.now");
    }

    /** A proposed claim that rests on a figure which keeps its limit: 450 % of range, as the tooth counts give. */
    private static Definition withProposed(Definition definition) {
        Claim holds = definition.get(Sample.id("K-006"), Claim.class).orElseThrow();
        return definition.with(groupwright.definition.assessment.Approving.propose(holds));
    }

    @Test
    void anApprovedClaimHoldsAndKeepsWhoAndWhen() throws Exception {
        with(place -> {
            bench.edit(Optional.empty(), ClaimDecisionsTest::withProposed, refused -> {});
            approve(place, "K-006", "range manager");
            List<Approval> approvals = claim("K-006").approvals();
            assertEquals("range manager", approvals.get(1).by());
            assertEquals("2026-03-20", approvals.get(1).date().toString()); // the clock given
            ClaimDetail detail = new ClaimsReading(bench.ledger(), Locale.UK)
                    .detail(Sample.id("K-006"))
                    .orElseThrow();
            assertEquals(ClaimGroup.HOLDING, detail.group());
            assertEquals(Optional.of("Approve K-006"), bench.edits.get(1));
        });
    }

    @Test
    void theRoleIsRememberedForTheNextApproval() throws Exception {
        with(place -> {
            approve(place, "K-001", "range manager");
            place.reveal(Address.of(Sample.id("K-003")));
            press(place, "claims.approve");
            assertEquals("range manager", field(place, "By whom, as a role").getText());
        });
    }

    @Test
    void whatIsUntrueIsRefusedInWordsAndNothingChanges() throws Exception {
        with(place -> {
            approve(place, "K-001", "range manager");
            assertTrue(refusal(place).contains("480"), refusal(place));
            assertEquals(Claim.State.PROPOSED, claim("K-001").state());
            assertEquals(List.of(), bench.edits);
        });
    }

    @Test
    void whatRestsOnNothingIsRefused() throws Exception {
        with(place -> {
            approve(place, "K-017", "range manager");
            assertTrue(refusal(place).startsWith("K-017 rests on nothing"), refusal(place));
            assertEquals(List.of(), bench.edits);
        });
    }

    @Test
    void nobodyApprovesWithoutARoleOrOnNoDay() throws Exception {
        with(place -> {
            approve(place, "K-006".replace("6", "2"), " ");
            assertEquals("Say by whom: the role of the person who signs.", refusal(place));
            field(place, "By whom, as a role").setText("range manager");
            field(place, "Date").setText("yesterday");
            press(place, "claims.now");
            assertTrue(refusal(place).startsWith("Not a date: “yesterday”."), refusal(place));
        });
    }

    @Test
    void withdrawingNeedsAReason() throws Exception {
        with(place -> {
            place.reveal(Address.of(Sample.id("K-014")));
            press(place, "claims.withdraw");
            press(place, "claims.now");
            assertTrue(refusal(place).contains("needs a reason"), refusal(place));
            field(place, "Why K-014 is withdrawn").setText("Cogs were edited");
            press(place, "claims.now");
            assertEquals(Claim.State.WITHDRAWN, claim("K-014").state());
            assertEquals("Cogs were edited", claim("K-014").stateReason());
            press(place, "claims.propose");
            assertEquals(Claim.State.PROPOSED, claim("K-014").state());
            assertEquals(1, claim("K-014").approvals().size());
        });
    }

    @Test
    void aNumberInTheDetailIsTheOneThatWorkingsShows() throws Exception {
        with(place -> {
            place.reveal(Address.of(Sample.id("K-013")));
            press(place, "claims.rest.spin-out-speed C-002 G-001 cadence=95");
            assertEquals(
                    Optional.of("spin-out-speed C-002 G-001 cadence=95"),
                    bench.selected().map(Object::toString));
            press(place, "claims.leads.spin-out-speed C-002 G-001 cadence=95");
            assertEquals(List.of(Address.of(Sample.id("R-004"))), bench.opened);
        });
    }

    @Test
    void theWordingIsPreviewedWhileItIsTyped() throws Exception {
        with(place -> {
            press(place, "claims.add");
            javax.swing.text.JTextComponent wording = Components.all((Container) place.component()).stream()
                    .filter(javax.swing.text.JTextComponent.class::isInstance)
                    .map(javax.swing.text.JTextComponent.class::cast)
                    .filter(text -> "Wording".equals(text.getAccessibleContext().getAccessibleName()))
                    .findFirst()
                    .orElseThrow();
            Preview preview = (Preview) named(place, "claims.preview");
            wording.setText("{{gear-range lead}} of range");
            assertEquals("450.0\u202f% of range", preview.shown().orElseThrow().text());
            wording.setText("{{gear-rnage lead}}");
            assertTrue(preview.shown().orElseThrow().wrong().get(0).contains("gear-range"));
        });
    }
}
