package groupwright.definition.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The typed fields that figures read through against the descriptions of the records. */
class FieldTest {
    private static final Map<Class<?>, List<Object>> OBJECTS = objects();

    /** All record classes: the kinds, and what stands inside them. */
    static Set<Class<?>> described() {
        Set<Class<?>> found = new LinkedHashSet<>();
        RecordKinds.all().forEach(kind -> collect(kind.shape(), found));
        return found;
    }

    private static void collect(Shape<?> shape, Set<Class<?>> found) {
        if (found.add(shape.type())) {
            for (Component component : shape.components()) {
                FieldType type = component.type() instanceof FieldType.ListOf list ? list.element() : component.type();
                if (type instanceof FieldType.Nested nested) {
                    collect(nested.shape(), found);
                }
            }
        }
    }

    static Stream<Field<?, ?>> constants() throws IllegalAccessException {
        List<Field<?, ?>> constants = new ArrayList<>();
        for (Class<?> type : described()) {
            for (java.lang.reflect.Field declared : type.getDeclaredFields()) {
                if (Modifier.isStatic(declared.getModifiers()) && declared.getType() == Field.class) {
                    Field<?, ?> field = (Field<?, ?>) declared.get(null);
                    assertEquals(type, field.owner(), declared + " stands in the class of its records");
                    constants.add(field);
                }
            }
        }
        assertTrue(constants.size() > 70, "found only " + constants.size());
        return constants.stream();
    }

    @ParameterizedTest
    @MethodSource("constants")
    void aFieldGivesTheComponentOfItsName(Field<?, ?> field) {
        Shape<?> shape = Shape.of(field.owner());
        assertEquals(1, field.path().size());
        int position = shape.indexOf(field.path().get(0));
        assertTrue(position >= 0, field + " names no component");
        Set<Object> values = new HashSet<>();
        for (Object object : objects(field.owner())) {
            Object expected = shape.value(object, position);
            assertEquals(expected, in(field, object), field.toString());
            values.add(expected);
        }
        assertTrue(values.size() > 1, field + " was only tried with " + values);
    }

    @SuppressWarnings("unchecked") // objects are of the field's owner
    private static <T> T in(Field<?, T> field, Object object) {
        return ((Field<Object, T>) field).in(object);
    }

    private static List<Object> objects(Class<?> type) {
        List<Object> found = OBJECTS.getOrDefault(type, List.of());
        assertTrue(found.size() > 2, "no random record holds a " + type);
        return found;
    }

    /** Every object in some random projects, by its class. */
    private static Map<Class<?>, List<Object>> objects() {
        Map<Class<?>, List<Object>> found = new HashMap<>();
        RandomRecords records = new RandomRecords(new Random(3));
        for (int i = 0; i < 3; i++) {
            Definition definition = records.project(100);
            RecordKinds.all().forEach(kind -> collect(definition.all(kind), found));
        }
        return found;
    }

    private static void collect(Object value, Map<Class<?>, List<Object>> found) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(inner -> collect(inner, found));
        } else if (value instanceof List<?> list) {
            list.forEach(element -> collect(element, found));
        } else if (value instanceof Entry
                || value instanceof Item
                || value instanceof Derailleur
                || value instanceof ShiftSystem) {
            found.computeIfAbsent(value.getClass(), any -> new ArrayList<>()).add(value);
            Shape<?> shape = Shape.of(value.getClass());
            for (int i = 0; i < shape.components().size(); i++) {
                collect(shape.value(value, i), found);
            }
        }
    }

    @Test
    void twoFieldsAreEqualWhenTheyTakeTheSameFromTheSamePlace() {
        Field<Requirement, Optional<Amount>> target = Field.item(Requirement.CRITERIA, "k1", Criterion.TARGET);
        assertEquals(target, Field.item(Requirement.CRITERIA, "k1", Criterion.TARGET));
        assertEquals(
                target.hashCode(),
                Field.item(Requirement.CRITERIA, "k1", Criterion.TARGET).hashCode());
        assertNotEquals(target, Field.item(Requirement.CRITERIA, "k2", Criterion.TARGET));
        assertNotEquals(Requirement.RETIRED, Need.RETIRED);
    }

    @Test
    void theIdsOfAListAreNotTheList() {
        assertNotEquals(Requirement.CRITERIA, Field.ids(Requirement.CRITERIA));
        assertEquals(Field.ids(Requirement.CRITERIA), Field.ids(Requirement.CRITERIA));
        assertEquals(List.of("criteria"), Field.ids(Requirement.CRITERIA).path());
    }

    @Test
    void aFieldInsideReadsThroughWhatMayBeAbsent() {
        Field<Concept, Optional<Amount>> tolerance = Field.inside(Concept.DERAILLEUR, Derailleur.HANGER_TOLERANCE);
        Field<Concept, Optional<Amount>> overshoot =
                Field.optionalInside(Concept.DERAILLEUR, Derailleur.OVERSHOOT_LARGEST);
        for (Object concept : objects(Concept.class)) {
            Optional<Derailleur> derailleur = ((Concept) concept).derailleur();
            assertEquals(derailleur.map(Derailleur::hangerTolerance_mm), in(tolerance, concept));
            assertEquals(derailleur.flatMap(Derailleur::overshootLargest_mm), in(overshoot, concept));
        }
        assertNotEquals(overshoot, Field.inside(Concept.DERAILLEUR, Derailleur.OVERSHOOT_LARGEST));
        assertEquals(List.of("derailleur", "hangerTolerance_mm"), tolerance.path());
        assertEquals("mm", tolerance.unit());
    }
}
