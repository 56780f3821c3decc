package groupwright.definition.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The descriptions of the records and the limits they state. */
class ShapeTest {
    private final RandomRecords records = new RandomRecords(new Random(17));
    private final Definition around = records.project(80);

    static List<RecordKind<?>> kinds() {
        return RecordKinds.all();
    }

    private Entry random(RecordKind<?> kind) {
        RecordId id = kind == RecordKinds.PROJECT ? RecordId.PROJECT : RecordId.of(kind.letters(), 7);
        return records.record(kind, id, around);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aRecordTakenApartAndPutTogetherIsEqual(RecordKind<?> kind) {
        for (int i = 0; i < 50; i++) {
            Entry entry = random(kind);
            Object[] values = new Object[kind.shape().components().size()];
            for (int k = 0; k < values.length; k++) {
                values[k] = kind.shape().value(entry, k);
            }
            assertEquals(entry, kind.shape().create(values));
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyFieldIsExplained(RecordKind<?> kind) {
        for (Component component : kind.shape().components()) {
            assertTrue(component.name().equals("id") || !component.help().isBlank(), component.name());
            assertFalse(component.help().endsWith("."), component.name());
            assertTrue(component.least() <= component.most(), component.name());
        }
    }

    /** Every number with limits, in every place of random records: just outside is refused there, the limit is not. */
    @ParameterizedTest
    @MethodSource("kinds")
    void aNumberOutsideItsLimitsIsRefusedByName(RecordKind<?> kind) {
        for (int i = 0; i < 20; i++) {
            Entry entry = random(kind);
            Definition definition = around.with(entry);
            for (Place place : Place.all(entry)) {
                Component component = place.component();
                if (component.type() instanceof FieldType.Number) {
                    assertRefused(definition, place, component.least(), l -> Amount.of(Math.nextDown(l)));
                    assertRefused(definition, place, component.most(), l -> Amount.of(Math.nextUp(l)));
                } else if (component.type() instanceof FieldType.Whole) {
                    assertRefused(definition, place, component.least(), l -> (int) l - 1);
                    assertRefused(definition, place, component.most(), l -> (int) l + 1);
                }
            }
        }
    }

    private static void assertRefused(Definition definition, Place place, double limit, DoubleFunction<Object> beyond) {
        if (Double.isInfinite(limit)) {
            return;
        }
        Object value = beyond.apply(limit);
        Invalid refused = assertThrows(
                Invalid.class, () -> definition.with(place.address(), Optional.of(value)), place::toString);
        assertEquals(place.address().field(), refused.field());
        assertTrue(refused.remedy().startsWith("write "), refused.getMessage());
    }

    /** Texts that must not be empty, lists with a size: each refused by name. */
    @ParameterizedTest
    @MethodSource("kinds")
    void whatTheDescriptionForbidsIsRefusedByName(RecordKind<?> kind) {
        Entry entry = random(kind);
        Definition definition = around.with(entry);
        for (Place place : Place.all(entry)) {
            forbidden(place.component()).ifPresent(value -> {
                Invalid refused = assertThrows(
                        Invalid.class, () -> definition.with(place.address(), Optional.of(value)), place::toString);
                assertEquals(place.address().field(), refused.field());
            });
        }
    }

    private static Optional<Object> forbidden(Component component) {
        if (component.type() instanceof FieldType.Text text && text.required()) {
            return Optional.of(" ");
        } else if (component.type() instanceof FieldType.ListOf list && list.least() > 0) {
            return Optional.of(List.of());
        }
        return Optional.empty();
    }

    @Test
    void aListThatIsTooLongIsRefusedWithItsSize() {
        Concept concept = (Concept) random(RecordKinds.CONCEPT);
        Definition definition = around.with(concept);
        Invalid refused = assertThrows(
                Invalid.class,
                () -> definition.with(Address.of(concept.id(), "rings"), Optional.of(List.of(50, 40, 30, 20))));
        assertEquals("rings: has 4 entries; write 1 to 3", refused.getMessage());
    }

    record OnlyMost(@Limits(most = 3) Amount number_mm) {}

    @Test
    void aLimitOnOneSideIsToldAsOne() {
        Invalid refused =
                assertThrows(Invalid.class, () -> Shape.of(OnlyMost.class).create(Amount.of(4)));
        assertEquals("number_mm: 4 is out of its limits; write at most 3 mm", refused.getMessage());
    }

    @Test
    void aRecordWithAnIdOfAnotherKindIsRefused() {
        Yardstick yardstick = records.record(RecordKinds.YARDSTICK, RecordId.of("Y", 1), around);
        Yardstick wrong = new Yardstick(RecordId.of("R", 1), "title", yardstick.description(), yardstick.values(), "");
        assertEquals("id", assertThrows(Invalid.class, () -> around.with(wrong)).field());
    }

    @Test
    void anIdStandsOnceInAProject() {
        List<Entry> twice = new ArrayList<>(around.all(RecordKinds.NEED));
        twice.add(twice.get(0));
        assertThrows(Invalid.class, () -> Definition.of(around.project(), twice));
        assertThrows(Invalid.class, () -> Definition.of(around.project(), List.of(around.project())));
    }

    @Test
    void theProjectStaysAndWhatIsNotThereNeedsNoTakingOut() {
        assertThrows(Invalid.class, () -> around.without(RecordId.PROJECT));
        assertEquals(around, around.without(new RecordId("XYZ-001")));
        assertEquals(around, around.without(RecordId.of("R", 999_999)));
    }

    /** Random records keep the rules of all records, or they could not be made; here: they also differ. */
    @ParameterizedTest
    @MethodSource("kinds")
    void randomRecordsFillAndEmptyEveryField(RecordKind<?> kind) {
        List<Entry> made = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            made.add(random(kind));
        }
        for (int i = 0; i < kind.shape().components().size(); i++) {
            int position = i;
            String name = kind.shape().components().get(i).name();
            long different = made.stream()
                    .map(entry -> kind.shape().value(entry, position))
                    .distinct()
                    .count();
            assertTrue(different > 1 || name.equals("id"), kind.noun() + ": " + name + " is always the same");
        }
    }
}
