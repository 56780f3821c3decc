package groupwright.definition.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Scene;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RandomEdits;
import groupwright.definition.record.RandomRecords;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Undoing and doing again. */
class HistoryTest {
    private static final Definition START = Scene.of(
                    Scene.record("G-001", "\"riderMass_kg\": 80"),
                    Scene.record("C-001", "\"rings\": [30], \"cogs\": [15]"))
            .definition();
    private static final Address MASS = Address.parse("G-001.riderMass_kg").orElseThrow();
    private static final Address COGS = Address.parse("C-001.cogs").orElseThrow();

    private static Definition mass(Definition definition, double mass) {
        return definition.with(MASS, Optional.of(Amount.of(mass)));
    }

    private static History.Edit edit(Definition before, Definition after) {
        return new History.Edit(Naming.between(before, after), before, after);
    }

    private static void assertSame(Definition expected, Definition actual) {
        assertEquals(List.of(), RecordDiff.between(expected, actual));
    }

    @Test
    void undoGoesBackAndRedoForth() {
        Definition edited = mass(START, 85);
        History.Moved back =
                History.EMPTY.with(edit(START, edited)).undo(edited).orElseThrow();
        assertSame(START, back.merge().merged());
        assertEquals(Optional.empty(), back.history().last());
        History.Moved forth = back.history().redo(back.merge().merged()).orElseThrow();
        assertSame(edited, forth.merge().merged());
        assertEquals(Optional.empty(), forth.history().next());
        assertEquals(
                "G-001 rider mass 80 → 85\u202fkg",
                forth.history().last().orElseThrow().name().text());
    }

    @Test
    void nothingToUndoIsNothing() {
        assertEquals(Optional.empty(), History.EMPTY.undo(START));
        assertEquals(Optional.empty(), History.EMPTY.redo(START));
    }

    @Test
    void undoLeavesWhatOthersChangedElsewhere() {
        Definition edited = mass(START, 85);
        Definition others = edited.with(COGS, Optional.of(List.of(16)));
        Merge undone = History.EMPTY
                .with(edit(START, edited))
                .undo(others)
                .orElseThrow()
                .merge();
        assertSame(START.with(COGS, Optional.of(List.of(16))), undone.merged());
        assertEquals(List.of(), undone.conflicts());
    }

    @Test
    void undoLeavesWhatOthersChangedInTheSamePlaceAndTellsIt() {
        Definition edited = mass(START, 85).with(COGS, Optional.of(List.of(16)));
        Definition others = mass(edited, 90);
        History.Moved undone =
                History.EMPTY.with(edit(START, edited)).undo(others).orElseThrow();
        assertSame(mass(START, 90), undone.merge().merged());
        assertEquals(
                List.of(new Conflict(
                        MASS, Optional.of(Amount.of(85)), Optional.of(Amount.of(90)), Optional.of(Amount.of(80)))),
                undone.merge().conflicts());
        History.Moved again = undone.history().redo(undone.merge().merged()).orElseThrow();
        assertSame(others, again.merge().merged());
    }

    @Test
    void aNewEditEndsWhatCouldBeDoneAgain() {
        History undone = History.EMPTY
                .with(edit(START, mass(START, 85)))
                .undo(mass(START, 85))
                .orElseThrow()
                .history();
        assertTrue(undone.next().isPresent());
        assertEquals(Optional.empty(), undone.with(edit(START, mass(START, 70))).next());
    }

    @Test
    void theOldestEditsAreForgotten() {
        History history = History.EMPTY;
        Definition present = START;
        for (int i = 1; i <= History.MOST + 3; i++) {
            Definition next = mass(present, 30 + i / 10.0);
            history = history.with(edit(present, next));
            present = next;
        }
        int undone = 0;
        while (history.last().isPresent()) {
            History.Moved moved = history.undo(present).orElseThrow();
            history = moved.history();
            present = moved.merge().merged();
            undone++;
        }
        assertEquals(History.MOST, undone);
        assertSame(mass(START, 30.3), present);
    }

    /** Whatever the edits: all of them undone is the start, all done again is the end. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void allTheWayBackAndForth(long seed) {
        RandomRecords records = new RandomRecords(new Random(seed));
        RandomEdits edits = new RandomEdits(records);
        Definition start = records.project(20);
        Definition present = start;
        History history = History.EMPTY;
        for (int i = 0; i < 60; i++) {
            Definition next = edits.edit(present);
            history = history.with(edit(present, next));
            present = next;
        }
        Definition end = present;
        while (history.last().isPresent()) {
            History.Moved moved = history.undo(present).orElseThrow();
            assertEquals(List.of(), moved.merge().conflicts(), "seed " + seed);
            history = moved.history();
            present = moved.merge().merged();
        }
        assertSame(start, present);
        while (history.next().isPresent()) {
            History.Moved moved = history.redo(present).orElseThrow();
            history = moved.history();
            present = moved.merge().merged();
        }
        assertSame(end, present);
    }
}
