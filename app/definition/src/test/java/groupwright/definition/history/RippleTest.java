package groupwright.definition.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.Scene;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.ledger.Fork;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Definition;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What follows from an edit, on the invented sample project. */
class RippleTest {
    private static final Scene SAMPLE = Scene.sample();

    private static List<Ask> watched(View view) {
        return new Assessment(view).watched();
    }

    private static Ripple ripple(View before, View after) {
        return Ripple.between(before, after, watched(before), watched(after));
    }

    private static Ripple ripple(Scene before, Scene after) {
        return ripple(before.ledger(), after.ledger());
    }

    private static List<String> asks(Ripple ripple) {
        return ripple.effects().stream().map(effect -> effect.ask().toString()).toList();
    }

    private static Ripple.Effect effect(Ripple ripple, String ask) {
        return ripple.effects().stream()
                .filter(effect -> effect.ask().toString().equals(ask))
                .findFirst()
                .orElseThrow(() -> new AssertionError(ask + " is not among " + asks(ripple)));
    }

    /** One cog larger in the lead concept; its margins were recomputed beside from the same invented data. */
    @Test
    void fortySixForFortyFiveTeethNamesWhatItTouches() {
        Scene after = SAMPLE.with("C-002.cogs", List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 46));
        List<Ask> capacity = List.of(SAMPLE.ask("total-capacity C-002"));
        Ripple ripple = ripple(SAMPLE, after);
        assertEquals(
                List.of("C-002.cogs"),
                ripple.changes().stream().map(c -> c.address().toString()).toList());

        Ripple.Effect passRoad = effect(ripple, "verdict C-002 R-003");
        Verdict was = (Verdict) passRoad.before().orElseThrow();
        Verdict is = (Verdict) passRoad.after().orElseThrow();
        assertEquals(-2.05, was.margin(), 0.005); // bisection beside, 9.81 m/s²
        assertEquals(-0.94, is.margin(), 0.005);
        assertEquals("misses", is.words().substring(0, 6));

        Ripple teeth = Ripple.between(SAMPLE.ledger(), after.ledger(), capacity, capacity);
        assertEquals(35, ((Quantity) teeth.effects().get(0).before().orElseThrow()).value());
        assertEquals(36, ((Quantity) teeth.effects().get(0).after().orElseThrow()).value());

        List<String> claims = asks(ripple).stream()
                .filter(ask -> ask.startsWith("claim-state"))
                .toList();
        assertEquals(List.of("claim-state K-006", "claim-state K-010"), claims); // range; lowest gear on 12 %
        for (String claim : claims) {
            assertEquals("holds", ((Word) effect(ripple, claim).before().orElseThrow()).word());
            assertEquals(
                    "changed since approval",
                    ((Word) effect(ripple, claim).after().orElseThrow()).word());
        }
        assertEquals(
                "gear-range C-002 was 450 %, is 460 %",
                ((Word) effect(ripple, "claim-state K-006").after().orElseThrow()).detail());
        assertTrue(
                asks(ripple).stream().allMatch(ask -> ask.startsWith("claim-state") || ask.contains("C-002")),
                asks(ripple)::toString); // no other concept is touched
    }

    @Test
    void aNoteIsQuiet() {
        Ripple ripple = ripple(SAMPLE, SAMPLE.with("R-003.rationale", "asked again by three riders"));
        assertTrue(ripple.isQuiet(), asks(ripple)::toString);
        assertEquals(
                List.of("R-003.rationale"),
                ripple.changes().stream().map(c -> c.address().toString()).toList());
        assertTrue(ripple(SAMPLE, SAMPLE).changes().isEmpty());
    }

    @Test
    void whatIsWatchedOnOneSideOnlyIsAnEffect() {
        Ripple gone = ripple(SAMPLE, SAMPLE.without("R-007"));
        Ripple.Effect effect = effect(gone, "verdict C-002 R-007");
        assertTrue(effect.before().isPresent());
        assertEquals(Optional.empty(), effect.after());
        Ripple back = ripple(SAMPLE.without("R-007"), SAMPLE);
        assertEquals(Optional.empty(), effect(back, "verdict C-002 R-007").before());
        assertTrue(effect(back, "verdict C-002 R-007").after().isPresent());
        assertFalse(gone.isQuiet());
    }

    @Test
    void backwardsItIsTheSameTurnedRound() {
        Scene after = SAMPLE.with("C-002.cogs", List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 46))
                .with("R-001.criteria.k1.target", 60);
        Ripple there = ripple(SAMPLE, after);
        Ripple back = ripple(after, SAMPLE);
        assertEquals(
                there.effects().stream()
                        .map(e -> new Ripple.Effect(e.ask(), e.after(), e.before()))
                        .collect(Collectors.toSet()),
                Set.copyOf(back.effects()));
        assertEquals(
                there.changes().stream()
                        .map(c -> new FieldChange(c.address(), c.after(), c.before()))
                        .toList(),
                back.changes());
    }

    /** A what-if, two ledgers and a ledger that moved must tell the same story. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void aForkATwinAndAMovedLedgerAgree(long seed) {
        RandomChange random = new RandomChange(new Random(seed));
        Definition before = random.some(SAMPLE.definition());
        Definition after = random.some(before);
        Ledger ledger = SAMPLE.at(before).ledger();
        List<Ask> watchedBefore = watched(ledger);
        watchedBefore.forEach(ledger::ask);

        Ripple fresh = ripple(SAMPLE.at(before).ledger(), SAMPLE.at(after).ledger());
        Fork fork = ledger.fork(after);
        Ripple forked = Ripple.between(ledger, fork, watchedBefore, watched(fork));
        assertEquals(fresh, forked, "fork, seed " + seed);

        Ripple moved = Ripple.between(SAMPLE.at(before).ledger(), moved(ledger, after), watchedBefore, watched(ledger));
        assertEquals(fresh, moved, "moved, seed " + seed);
        assertFieldsStandWhereTheySay(fresh, before, after, seed);
    }

    private static Ledger moved(Ledger ledger, Definition to) {
        ledger.moveTo(to);
        return ledger;
    }

    private static void assertFieldsStandWhereTheySay(Ripple ripple, Definition before, Definition after, long seed) {
        for (FieldChange change : ripple.changes()) {
            String where = change.address() + ", seed " + seed;
            assertEquals(before.value(change.address()), change.before(), where);
            assertEquals(after.value(change.address()), change.after(), where);
            assertFalse(change.before().equals(change.after()), where);
        }
        assertEquals(
                Definition.changes(before, after).stream()
                        .filter(change -> !change.before().equals(change.after()))
                        .map(Definition.Change::id)
                        .collect(Collectors.toSet()),
                ripple.changes().stream().map(c -> c.address().record()).collect(Collectors.toSet()),
                "seed " + seed);
    }
}
