package groupwright.definition.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RandomEdits;
import groupwright.definition.record.RandomRecords;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every merge, on random projects with random edits. */
class MergeLawsTest {
    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    private static void assertSame(Definition expected, Definition actual, String message) {
        assertEquals(List.of(), RecordDiff.between(expected, actual), message);
    }

    /** Three states of a small project, so that both sides often meet in one record. */
    private static final class Sides {
        final Definition base;
        final Definition ours;
        final Definition theirs;

        Sides(long seed) {
            Random random = new Random(seed);
            RandomRecords records = new RandomRecords(random);
            RandomEdits edits = new RandomEdits(records);
            base = records.project(15);
            ours = edits.edits(base, 1 + random.nextInt(25));
            theirs = edits.edits(base, 1 + random.nextInt(25));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whereOneSideDidNothingTheOtherIsTaken(long seed) {
        Sides is = new Sides(seed);
        for (Merge merge : List.of(Merge.of(is.base, is.base, is.theirs), Merge.of(is.theirs, is.theirs, is.theirs))) {
            assertSame(is.theirs, merge.merged(), "seed " + seed);
            assertEquals(List.of(), merge.conflicts(), "seed " + seed);
        }
        Merge ours = Merge.of(is.base, is.ours, is.base);
        assertSame(is.ours, ours.merged(), "seed " + seed);
        assertEquals(List.of(), ours.conflicts(), "seed " + seed);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bothTheSameIsThatAndNoConflict(long seed) {
        Sides is = new Sides(seed);
        Merge merge = Merge.of(is.base, is.ours, is.ours);
        assertSame(is.ours, merge.merged(), "seed " + seed);
        assertEquals(List.of(), merge.conflicts(), "seed " + seed);
    }

    /** Told from the two differences alone: the places that both changed, or one of them inside the other's. */
    private static Set<Address> contested(Sides is) {
        List<FieldChange> ours = RecordDiff.between(is.base, is.ours);
        List<FieldChange> theirs = RecordDiff.between(is.base, is.theirs);
        Set<Address> contested = new TreeSet<>();
        for (FieldChange here : ours) {
            for (FieldChange there : theirs) {
                boolean same =
                        here.address().equals(there.address()) && here.after().equals(there.after());
                if (!same && isInside(here.address(), there.address())) {
                    contested.add(there.address());
                } else if (!same && isInside(there.address(), here.address())) {
                    contested.add(here.address());
                }
            }
        }
        return contested;
    }

    private static boolean isInside(Address inner, Address outer) {
        return inner.record().equals(outer.record())
                && inner.path().size() >= outer.path().size()
                && inner.path().subList(0, outer.path().size()).equals(outer.path());
    }

    /** A conflict at a record that both kept comes of a rule between fields, which the differences cannot show. */
    private static boolean isBrokenRule(Conflict conflict) {
        return conflict.address().path().isEmpty()
                && conflict.base().isPresent()
                && conflict.ours().isPresent()
                && conflict.theirs().isPresent();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void conflictsAreExactlyThePlacesBothChangedDifferently(long seed) {
        Sides is = new Sides(seed);
        Merge merge = Merge.of(is.base, is.ours, is.theirs);
        Set<Address> expected = contested(is);
        Set<Address> found = new TreeSet<>();
        for (Conflict conflict : merge.conflicts()) {
            if (isBrokenRule(conflict)) {
                expected.removeIf(
                        address -> address.record().equals(conflict.address().record()));
            } else {
                found.add(conflict.address());
            }
            assertEquals(conflict.ours(), is.ours.value(conflict.address()), "seed " + seed);
            assertEquals(conflict.theirs(), is.theirs.value(conflict.address()), "seed " + seed);
            assertEquals(conflict.base(), is.base.value(conflict.address()), "seed " + seed);
            assertEquals(conflict.ours(), merge.merged().value(conflict.address()), "ours is kept, seed " + seed);
        }
        assertEquals(expected, found, "seed " + seed);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void editsThatDoNotMeetCommute(long seed) {
        Sides is = new Sides(seed);
        Merge one = Merge.of(is.base, is.ours, is.theirs);
        Merge other = Merge.of(is.base, is.theirs, is.ours);
        assertEquals(
                one.conflicts().stream().map(Conflict::address).toList(),
                other.conflicts().stream().map(Conflict::address).toList(),
                "seed " + seed);
        List<FieldChange> differing = RecordDiff.between(one.merged(), other.merged());
        List<FieldChange> unexplained = new ArrayList<>(differing);
        unexplained.removeIf(change ->
                one.conflicts().stream().anyMatch(conflict -> isInside(change.address(), conflict.address())));
        assertEquals(List.of(), unexplained, "seed " + seed);
    }

    /** Taking theirs at every conflict gives what theirs would have got by merging ours in. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyConflictCanBeSettledForTheOtherSide(long seed) {
        Sides is = new Sides(seed);
        Merge merge = Merge.of(is.base, is.ours, is.theirs);
        Definition other = Merge.of(is.base, is.theirs, is.ours).merged();
        Definition settled = merge.merged();
        for (Conflict conflict : merge.conflicts()) {
            settled = Merge.taking(settled, other, conflict.address());
            assertEquals(conflict.theirs(), settled.value(conflict.address()), "seed " + seed);
        }
        assertTrue(RecordDiff.between(settled, other).isEmpty(), "seed " + seed);
    }
}
