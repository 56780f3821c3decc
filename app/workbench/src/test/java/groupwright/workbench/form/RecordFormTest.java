package groupwright.workbench.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.FakeBench;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.notation.Typed;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordFormTest {
    private static final Definition TARNBECK = Sample.definition();
    private static final Catalogue CATALOGUE = Catalogue.ofServices();

    private FakeBench bench = new FakeBench(Locale.UK, TARNBECK);

    @BeforeAll
    static void look() {
        Look.setUp(Theme.LIGHT, 1);
    }

    private RecordForm form(String id) {
        RecordForm form = new RecordForm(bench, CATALOGUE, Arrangement.usual());
        form.show(new RecordId(id));
        bench.afterEachStep(form::refresh);
        return form;
    }

    private static FieldRow row(RecordForm form, String path) {
        return form.body().row(List.of(path.split("\\."))).orElseThrow(() -> new AssertionError("no field " + path));
    }

    private static void type(FieldRow row, String text) {
        row.resume(text);
        row.commit();
    }

    private <R extends Entry> R record(String id, Class<R> type) {
        return bench.definition().get(new RecordId(id), type).orElseThrow();
    }

    /** Presses the button of this name, as a screen reader says it. */
    private static void press(Container in, String name) {
        List<JButton> found = new ArrayList<>();
        collect(in, found);
        found.stream()
                .filter(button -> name.equals(button.getAccessibleContext().getAccessibleName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + name))
                .doClick(0);
    }

    private static void collect(Container in, List<JButton> found) {
        for (Component part : in.getComponents()) {
            if (part instanceof JButton button) {
                found.add(button);
            } else if (part instanceof Container inner) {
                collect(inner, found);
            }
        }
    }

    @Test
    void typingWhatIsShownChangesNothingInAnyFieldOfAnyRecord() {
        int fields = typeWhatIsShown("de-DE", Integer.MAX_VALUE);
        assertTrue(fields > 2000, "fields seen: " + fields);
        typeWhatIsShown("en-GB", 3);
    }

    private int typeWhatIsShown(String tag, int records) {
        bench = new FakeBench(Locale.forLanguageTag(tag), TARNBECK);
        int fields = 0;
        for (RecordKind<?> kind : RecordKinds.all()) {
            for (Entry entry : TARNBECK.all(kind).stream().limit(records).toList()) {
                RecordForm form = new RecordForm(bench, CATALOGUE, Arrangement.usual());
                form.show(entry.id());
                for (BoundRow bound : form.body().rows()) {
                    String shown = bound.row().editor().text();
                    Optional<?> value = bound.row().value();
                    String where = entry.id() + "." + String.join(".", bound.path()) + ": " + shown;
                    if (!namesUnknownFigure(bound)) {
                        assertEquals(
                                new Typed.Value(value),
                                bound.notation().apply(entry).read(shown),
                                where);
                    }
                    type(bound.row(), shown);
                    fields++;
                }
            }
        }
        assertSame(TARNBECK, bench.definition());
        assertEquals(List.of(), bench.edits());
        return fields;
    }

    /** The sample speaks of figures that are still to come; they stay as they are, but cannot be typed. */
    private static boolean namesUnknownFigure(BoundRow bound) {
        return bound.path().get(bound.path().size() - 1).equals("figure")
                && CATALOGUE
                        .find(bound.row().value().map(Object::toString).orElse(""))
                        .isEmpty();
    }

    @Test
    void everyFieldSaysItsNameAndWhatItHolds() {
        for (RecordKind<?> kind : RecordKinds.all()) {
            for (Entry entry : TARNBECK.all(kind).stream().limit(2).toList()) {
                RecordForm form = new RecordForm(bench, CATALOGUE, Arrangement.usual());
                form.show(entry.id());
                for (BoundRow bound : form.body().rows()) {
                    var context = bound.row().editor().input().getAccessibleContext();
                    assertFalse(
                            context.getAccessibleName().isBlank(), bound.path().toString());
                    boolean own = bound.path().equals(List.of("id"));
                    assertTrue(
                            own || !context.getAccessibleDescription().isBlank(),
                            bound.path().toString());
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"190.5", "190,5"})
    void anEditOfAFieldIsOneEditOfTheProject(String typed) {
        RecordForm form = form("G-002");
        type(row(form, "powerAllDay_W"), typed);
        assertEquals(
                Optional.of(Amount.of(190.5)), record("G-002", RiderGroup.class).powerAllDay_W());
        assertEquals(List.of(Optional.empty()), bench.edits());
        assertEquals("190.5", row(form, "powerAllDay_W").editor().text());
    }

    @Test
    void whatIsWrongChangesNothingAndIsSaidWhileTyping() {
        RecordForm form = form("G-002");
        FieldRow power = row(form, "powerHour_W");
        power.resume("19o");
        assertEquals("Not a number: “19o”. Type watts, for example 400.", power.sentence());
        power.commit();
        assertSame(TARNBECK, bench.definition());
        assertEquals("19o", power.editor().text());
        String described = power.editor().input().getAccessibleContext().getAccessibleDescription();
        assertTrue(described.startsWith("Not a number"), described);
        power.restore();
        assertEquals("", power.sentence());
        assertFalse(power.isTouched());
    }

    @Test
    void anotherEditLeavesWhatIsBeingTyped() {
        RecordForm form = form("G-002");
        row(form, "powerHour_W").resume("22");
        type(row(form, "importance"), "9");
        assertEquals("22", row(form, "powerHour_W").editor().text());
        assertEquals(9, record("G-002", RiderGroup.class).importance());
    }

    @Test
    void aRuleOfTheRecordIsSaidAtTheFieldItNames() {
        RecordForm form = form("C-002");
        type(row(form, "cogs"), "10-12-11");
        assertEquals(
                "11 follows 12, but cogs stand smallest first. Sort them, each once.",
                row(form, "cogs").sentence());
        assertSame(TARNBECK, bench.definition());
        RecordForm riders = form("G-002");
        type(row(riders, "mud_pct"), "90");
        assertEquals(
                "Dust, mud and cold add up to more than 100 %. Lower one of the shares.",
                row(riders, "dust_pct").sentence());
    }

    @Test
    void fieldsBoundToEachOtherChangeTogether() {
        RecordForm form = form("R-001");
        type(row(form, "criteria.k1.comparator"), "Between");
        assertSame(TARNBECK, bench.definition());
        assertEquals(
                "Between needs two limits. Add upper.",
                row(form, "criteria.k1.upper").sentence());
        type(row(form, "criteria.k1.upper"), "60");
        Criterion now = record("R-001", Requirement.class).criteria().get(0);
        assertEquals(Criterion.Comparator.BETWEEN, now.comparator());
        assertEquals(Optional.of(Amount.of(60)), now.upper());
        assertEquals(1, bench.edits().size());
        type(row(form, "criteria.k1.comparator"), "At least");
        type(row(form, "criteria.k1.upper"), "");
        assertEquals(
                Optional.empty(),
                record("R-001", Requirement.class).criteria().get(0).upper());
    }

    @Test
    void escapeForgetsWhatWasHeldBack() {
        RecordForm form = form("R-001");
        type(row(form, "criteria.k1.comparator"), "Between");
        row(form, "criteria.k1.comparator").restore();
        type(row(form, "criteria.k1.target"), "51");
        Criterion now = record("R-001", Requirement.class).criteria().get(0);
        assertEquals(Criterion.Comparator.AT_LEAST, now.comparator());
        assertEquals(51, now.target().value());
    }

    @Test
    void whatTheLastStepChangedSaysWhatItWas() {
        RecordForm form = form("G-002");
        type(row(form, "powerHour_W"), "199");
        Container powerRow = row(form, "powerHour_W");
        String was = ((javax.swing.JLabel) powerRow.getComponent(2)).getText();
        double before = TARNBECK.get(new RecordId("G-002"), RiderGroup.class)
                .orElseThrow()
                .powerHour_W()
                .orElseThrow()
                .value();
        assertEquals("was " + (int) before + "\u202fW", was);
    }

    @Test
    void itemsAreDuplicatedMovedAndRemoved() {
        RecordForm form = form("G-002");
        List<String> before = climbs();
        press(form, "Duplicate climb " + before.get(0));
        assertEquals(before.size() + 1, climbs().size());
        String copy = climbs().get(1);
        press(form, "Move climb " + copy + " down");
        assertEquals(copy, climbs().get(2));
        press(form, "Move climb " + copy + " up");
        press(form, "Remove climb " + copy);
        assertEquals(before, climbs());
        assertEquals(
                Optional.of("Duplicate climb " + before.get(0)), bench.edits().get(0));
    }

    private List<String> climbs() {
        return record("G-002", RiderGroup.class).climbs().stream()
                .map(climb -> climb.id())
                .toList();
    }

    @Test
    void aNewItemAsksForWhatItNeeds() {
        RecordForm form = form("R-001");
        press(form, "Add criterion");
        DraftPanel draft = form.body().draft(List.of("criteria")).orElseThrow();
        draft.addNow();
        assertSame(TARNBECK, bench.definition());
        FieldRow figure = draft.body().row(List.of("figure")).orElseThrow();
        assertEquals("Figure is not given. Give it before adding.", figure.sentence());
        type(figure, "Largest step");
        assertEquals(
                "At most",
                draft.body().row(List.of("comparator")).orElseThrow().editor().text());
        type(draft.body().row(List.of("target")).orElseThrow(), "18");
        type(draft.body().row(List.of("parameters", "from-teeth")).orElseThrow(), "14");
        draft.addNow();
        Criterion added = record("R-001", Requirement.class).criteria().get(1);
        assertEquals("k2", added.id());
        assertEquals("largest-step", added.figure());
        assertEquals("%", added.unit());
        assertEquals("from-teeth=14", added.parameters().toString());
        assertEquals(List.of(Optional.of("Add criterion")), bench.edits());
    }

    @Test
    void anInnerObjectComesAndGoes() {
        RecordForm form = form("C-002");
        press(form, "Remove derailleur");
        assertEquals(Optional.empty(), record("C-002", Concept.class).derailleur());
        press(form, "Add derailleur");
        type(row(form, "derailleur.pulleyDistance_mm"), "93");
        assertEquals(
                Optional.of(Amount.of(93)),
                record("C-002", Concept.class).derailleur().orElseThrow().pulleyDistance_mm());
    }

    @Test
    void aNewRecordOfEveryKindAsksAndIsAddedByOneEdit() {
        for (RecordKind<?> kind : RecordKinds.all()) {
            if (kind.equals(RecordKinds.PROJECT)) {
                continue;
            }
            bench = new FakeBench(Locale.UK, TARNBECK);
            List<RecordId> added = new ArrayList<>();
            NewRecordForm form = new NewRecordForm(bench, CATALOGUE, kind, Map.of(), added::add, () -> {});
            bench.afterEachStep(form::refresh);
            form.panel().addNow();
            assertSame(TARNBECK, bench.definition(), kind.noun());
            for (String asked : List.copyOf(form.panel().draft().asked())) {
                FieldRow row = form.panel().body().row(List.of(asked)).orElseThrow();
                assertFalse(row.sentence().isEmpty(), kind.noun() + "." + asked);
                type(row, answer(row, kind, asked));
            }
            RecordId next = TARNBECK.nextId(kind);
            form.panel().addNow();
            assertEquals(List.of(next), added, kind.noun());
            assertEquals(List.of(Optional.of("Add " + kind.noun())), bench.edits());
        }
    }

    private static String answer(FieldRow row, RecordKind<?> kind, String field) {
        if (row.editor() instanceof ChoiceEditor choice) {
            return ((javax.swing.JComboBox<?>) choice.input()).getItemAt(0).toString();
        }
        return switch (field) {
            case "concept" -> "C-002";
            case "rings" -> "32";
            case "cogs" -> "10-12-14";
            default -> kind.noun() + " of a test 12".substring(0, 10);
        };
    }

    @Test
    void recordsAreRetiredAndParkedWithAReason() {
        RecordActions actions = new RecordActions(bench);
        bench.afterEachStep(actions::refresh);
        actions.show(new RecordId("R-001"));
        press(actions, "Retire R-001");
        ReasonPanel asking = actions.asking().orElseThrow();
        asking.actNow();
        assertEquals("No reason is given. Say why, in a few words.", asking.sentence());
        assertSame(TARNBECK, bench.definition());
        asking.reason().setText("another one says the same");
        asking.actNow();
        assertEquals(
                "another one says the same", record("R-001", Requirement.class).retired());
        assertTrue(actions.asking().isEmpty());
        press(actions, "Bring R-001 back");
        assertTrue(record("R-001", Requirement.class).isCurrent());
        press(actions, "Duplicate R-001");
        assertEquals(
                record("R-001", Requirement.class).title() + " copy",
                bench.definition()
                        .get(TARNBECK.nextId(RecordKinds.REQUIREMENT))
                        .orElseThrow()
                        .title());
    }
}
