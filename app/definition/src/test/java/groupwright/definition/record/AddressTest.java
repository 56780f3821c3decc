package groupwright.definition.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading and writing one field of a record by its address. */
class AddressTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void everyFieldCanBeWrittenAndReadBackAndNothingElseChanges(long seed) {
        RandomRecords records = new RandomRecords(new Random(seed));
        Definition definition = records.project(150);
        int written = 0;
        for (RecordKind<?> kind : RecordKinds.all()) {
            for (Entry entry : definition.all(kind)) {
                for (Place place : Place.all(entry)) {
                    written += writeAndReadBack(records, definition, entry, place);
                }
            }
        }
        assertTrue(written > 2000, "only " + written + " fields were written");
    }

    private static int writeAndReadBack(RandomRecords records, Definition before, Entry entry, Place place) {
        Optional<Object> value = place.isOptional() && records.random().nextInt(3) == 0
                ? Optional.empty()
                : Optional.of(records.value(place.component(), before));
        Definition after;
        try {
            after = before.with(place.address(), value);
        } catch (Invalid rule) { // a rule between fields; no limit of the field itself may refuse
            assertTrue(rule.wrong().length() > 0 && !rule.wrong().contains("out of its limits"), rule.getMessage());
            assertTrue(pathExists(entry, rule.field()), place.address() + " refused at " + rule.field());
            return 0;
        }
        assertEquals(value, after.value(place.address()), place.address().toString());
        for (Place other : Place.all(entry)) {
            boolean related = startsWith(other.address().path(), place.address().path())
                    || startsWith(place.address().path(), other.address().path());
            if (!related) {
                assertEquals(before.value(other.address()), after.value(other.address()), other.address() + " changed");
            }
        }
        return 1;
    }

    private static boolean startsWith(List<String> path, List<String> start) {
        return path.size() >= start.size() && path.subList(0, start.size()).equals(start);
    }

    /** The refusal names a field that stands in the record, from the record on. */
    private static boolean pathExists(Entry entry, String field) {
        List<String> path = new ArrayList<>(List.of(field.split("\\.")));
        Object at = entry;
        for (String name : path) {
            if (at instanceof List<?> list) {
                at = list.stream()
                        .filter(element ->
                                element instanceof Item item && item.id().equals(name))
                        .findFirst()
                        .orElse(null);
                if (at == null) {
                    return true; // an entry of the new list
                }
            } else {
                int position = at instanceof Record ? Shape.of(at.getClass()).indexOf(name) : -1;
                if (position < 0) {
                    return false;
                }
                Object value = Shape.of(at.getClass()).value(at, position);
                at = value instanceof Optional<?> optional ? optional.orElse(null) : value;
                if (at == null) {
                    return true;
                }
            }
        }
        return true;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {4, 5})
    void everyAddressIsSpelledAndReadBack(long seed) {
        Definition definition = new RandomRecords(new Random(seed)).project(60);
        for (RecordKind<?> kind : RecordKinds.all()) {
            for (Entry entry : definition.all(kind)) {
                for (Place place : Place.all(entry)) {
                    assertEquals(
                            Optional.of(place.address()),
                            Address.parse(place.address().toString()));
                }
            }
        }
    }

    private static final RecordId ID = RecordId.of("R", 1);
    private final Definition one = oneRequirement();

    private static Definition oneRequirement() {
        RandomRecords records = new RandomRecords(new Random(11));
        Criterion criterion = new Criterion(
                "k1",
                "gear-range",
                Settings.NONE,
                Criterion.Comparator.BETWEEN,
                Amount.of(10),
                Optional.of(Amount.of(20)),
                "",
                Optional.empty());
        Definition empty = Definition.of(records.project(1).project());
        return empty.with(records.record(RecordKinds.REQUIREMENT, ID, empty))
                .with(Address.of(ID, "criteria"), Optional.of(List.of(criterion)));
    }

    private String refused(Address address, Optional<?> value) {
        return assertThrows(Invalid.class, () -> one.with(address, value)).field();
    }

    @Test
    void aRuleOfAnInnerObjectIsRefusedAtTheFieldThatBreaksIt() {
        assertEquals(
                "criteria.k1.upper", refused(Address.of(ID, "criteria", "k1", "target"), Optional.of(Amount.of(30))));
        assertEquals("criteria.k1.upper", refused(Address.of(ID, "criteria", "k1", "upper"), Optional.empty()));
    }

    @Test
    void anAddressThatLeadsNowhereIsRefusedWhereItLeavesTheRecord() {
        assertEquals("criteria.k9", refused(Address.of(ID, "criteria", "k9", "target"), Optional.of(Amount.of(1))));
        assertEquals("criteria.k1.t", refused(Address.of(ID, "criteria", "k1", "t"), Optional.of(Amount.of(1))));
        assertEquals("weight.x", refused(Address.of(ID, "weight", "x"), Optional.of(1)));
        assertEquals("", refused(Address.of(RecordId.of("R", 2), "weight"), Optional.of(1)));
    }

    @Test
    void aFieldThatMustBeThereCannotBeEmptied() {
        assertEquals("weight", refused(Address.of(ID, "weight"), Optional.empty()));
        assertEquals("criteria.k1.target", refused(Address.of(ID, "criteria", "k1", "target"), Optional.empty()));
    }

    @Test
    void anIdIsPermanent() {
        assertEquals("id", refused(Address.of(ID, "id"), Optional.of(RecordId.of("R", 2))));
    }

    @Test
    void anObjectIsTakenOutOfItsList() {
        Definition without = one.with(Address.of(ID, "criteria", "k1"), Optional.empty());
        assertEquals(Optional.of(List.of()), without.value(Address.of(ID, "criteria")));
        assertEquals(Optional.empty(), without.value(Address.of(ID, "criteria", "k1", "target")));
    }
}
