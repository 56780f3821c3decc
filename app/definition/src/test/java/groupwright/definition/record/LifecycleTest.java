package groupwright.definition.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.interchange.Defaults;
import groupwright.definition.interchange.Draft;
import groupwright.definition.project.NewProject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LifecycleTest {
    private static final RecordId CLAIM = new RecordId("K-001");
    private static final RecordId CONCEPT = new RecordId("C-001");
    private static final Definition PROJECT = Definition.of(NewProject.project("Test", "EUR", Optional.empty()))
            .with(Defaults.of(
                    Shape.of(Claim.class),
                    Map.of(
                            "id",
                            CLAIM,
                            "wording",
                            "It climbs",
                            "state",
                            Claim.State.APPROVED,
                            "stateReason",
                            "shown",
                            "approvals",
                            List.of(new Approval("a1", "lead", LocalDate.of(2026, 3, 9), "It climbs", List.of())))))
            .with(Defaults.of(
                    Shape.of(Concept.class),
                    Map.of(
                            "id",
                            CONCEPT,
                            "title",
                            "One ring",
                            "rings",
                            List.of(32),
                            "cogs",
                            List.of(10, 12, 14),
                            "excludedGears",
                            List.of(new ExcludedGear("x1", 32, 10), new ExcludedGear("x2", 32, 12)))));

    @Test
    void aCopyCarriesNoApprovalAndNoState() {
        Definition after = Lifecycle.duplicate(PROJECT, CLAIM);
        Claim copy = after.get(new RecordId("K-002"), Claim.class).orElseThrow();
        assertEquals("It climbs copy", copy.wording());
        assertEquals(Claim.State.PROPOSED, copy.state());
        assertEquals(List.of(), copy.approvals());
        assertEquals("", copy.stateReason());
    }

    @Test
    void retiringNeedsAReasonAndCanBeTakenBack() {
        Definition retired = Lifecycle.retire(PROJECT, CONCEPT, " too heavy ");
        assertEquals("too heavy", retired.get(CONCEPT).orElseThrow().retired());
        assertEquals(PROJECT.get(CONCEPT), Lifecycle.bringBack(retired, CONCEPT).get(CONCEPT));
        Invalid refused = assertThrows(Invalid.class, () -> Lifecycle.retire(PROJECT, CONCEPT, " \n"));
        assertEquals("retired", refused.field());
        assertThrows(Invalid.class, () -> Lifecycle.retire(PROJECT, RecordId.PROJECT, "why"));
        assertThrows(Invalid.class, () -> Lifecycle.retire(PROJECT, new RecordId("C-099"), "why"));
    }

    @Test
    void onlySomeKindsAreParked() {
        Definition parked = Lifecycle.park(PROJECT, CONCEPT, "waits for a chain");
        assertTrue(Lifecycle.isParked(parked.get(CONCEPT).orElseThrow()));
        assertEquals(PROJECT.get(CONCEPT), Lifecycle.unpark(parked, CONCEPT).get(CONCEPT));
        assertFalse(Lifecycle.canBeParked(RecordKinds.CLAIM));
        assertThrows(Invalid.class, () -> Lifecycle.park(PROJECT, CLAIM, "why"));
        assertThrows(Invalid.class, () -> Lifecycle.unpark(PROJECT, CLAIM));
        assertThrows(Invalid.class, () -> Lifecycle.park(PROJECT, CONCEPT, ""));
    }

    @Test
    void itemsMoveAndGetIdsOfTheirOwn() {
        Address gears = Address.of(CONCEPT, "excludedGears");
        Definition moved = ItemList.edit(PROJECT, gears, list -> ItemList.moved(list, "x1", 5));
        assertEquals(List.of("x2", "x1"), ids(moved));
        Definition copied = ItemList.edit(moved, gears, list -> ItemList.duplicated(list, "x2"));
        assertEquals(List.of("x2", "x3", "x1"), ids(copied));
        assertEquals(List.of("x2", "x3"), ids(ItemList.edit(copied, gears, list -> ItemList.removed(list, "x1"))));
        assertThrows(Invalid.class, () -> ItemList.edit(PROJECT, gears, list -> ItemList.removed(list, "x9")));
        assertEquals("steep-2", ItemList.freeId(List.of(new ExcludedGear("steep", 32, 10)), "steep"));
    }

    private static List<String> ids(Definition definition) {
        return definition.get(CONCEPT, Concept.class).orElseThrow().excludedGears().stream()
                .map(ExcludedGear::id)
                .toList();
    }

    @Test
    void refusalsOfInnerObjectsAreNamedFromTheRecord() {
        Address gear = Address.of(CONCEPT, "excludedGears", "x1");
        Invalid refused =
                assertThrows(Invalid.class, () -> ObjectEdit.with(PROJECT, gear, Map.of("ring", Optional.of(1))));
        assertEquals("excludedGears.x1.ring", refused.field());
        assertSame(PROJECT, ObjectEdit.with(PROJECT, gear, Map.of("ring", Optional.of(32))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Concept", "Requirement", "Need", "LineSold", "Decision"})
    void aDraftAsksForWhatHasNoUsualValue(String name) {
        RecordKind<?> kind = RecordKinds.all().stream()
                .filter(one -> one.type().getSimpleName().equals(name))
                .findFirst()
                .orElseThrow();
        Draft draft = Draft.of(kind.shape(), Map.of("id", RecordId.of(kind.letters(), 0)));
        for (Component component : kind.shape().components()) {
            boolean usual = component.missing().isPresent()
                    || component.optional() == Component.Presence.OPTIONAL
                    || component.name().equals("id");
            assertEquals(!usual, draft.asked().contains(component.name()), component.name());
        }
    }

    @Test
    void aDraftOfEveryItemCanBeBegun() {
        for (Class<?> item : List.of(
                Criterion.class,
                Climb.class,
                GradeBand.class,
                PriceBreak.class,
                TestResult.class,
                Support.class,
                YardstickValue.class,
                ExcludedGear.class,
                ShiftSystem.class,
                Decision.Option.class,
                Decision.Weighing.class,
                Decision.Score.class,
                Milestone.EntryCriterion.class,
                Milestone.Signature.class)) {
            Shape<?> shape = Shape.of(item);
            Draft draft = Draft.of(shape, shape.indexOf("id") < 0 ? Map.of() : Map.of("id", "n1"));
            assertFalse(draft.isComplete(), item.getSimpleName());
        }
    }
}
