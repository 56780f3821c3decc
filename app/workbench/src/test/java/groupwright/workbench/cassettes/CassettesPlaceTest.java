package groupwright.workbench.cassettes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.cassettes.CogChange;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Decision;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.session.Session;
import groupwright.definition.session.SessionOpening;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Measures;
import groupwright.drivetrain.search.Objective;
import groupwright.workbench.Components;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The place on a bench without a window, and what it does to a project. */
class CassettesPlaceTest {
    private static final RecordId C1 = Sample.id("C-001");
    private static final RecordId C2 = Sample.id("C-002");
    private static final RecordId C4 = Sample.id("C-004");
    private static final Cassette OTHER = Cassette.of(10, 12, 14, 16, 19, 22, 26, 30, 35, 40, 47);

    @TempDir
    Path temp;

    @BeforeEach
    void look() {
        Look.setUp(Theme.LIGHT, 1);
    }

    private static Concept concept(Definition definition, RecordId id) {
        return definition.get(id, Concept.class).orElseThrow();
    }

    private static void press(CassettesBench bench, String name) {
        ((AbstractButton) Components.named(bench.view(), name).orElseThrow()).doClick(0);
    }

    private static CassettesBench narrow() {
        CassettesBench bench = new CassettesBench(Sample.definition());
        bench.view().limits().field("LARGEST_FROM").setText("46");
        bench.view().limits().field("LARGEST_TO").setText("46");
        return bench;
    }

    @Test
    void nothingIsSearchedWhereTheButtonIsPressed() {
        CassettesBench bench = narrow();
        bench.view().limits().find();
        assertEquals(Optional.empty(), bench.view().shown());
        assertEquals(1, bench.waiting());
        bench.step();
        Finding found = bench.view().shown().orElseThrow().finding();
        assertFalse(found.isJudged()); // shown before it is judged
        bench.workOff();
        assertTrue(bench.view().shown().orElseThrow().finding().isWhole());
    }

    @Test
    void whatCannotBeSearchedIsSaidAndFindWaits() {
        CassettesBench bench = narrow();
        bench.view().limits().field("STEP").setText("2o");
        assertFalse(bench.view().limits().canFind());
        assertEquals(
                "Not a number: “2o”. Type one, for example 18.5.",
                bench.view().limits().said(Entry.STEP));
        bench.view().limits().find();
        assertEquals(0, bench.waiting());
        bench.view().limits().field("STEP").setText("20");
        assertTrue(bench.view().limits().canFind());
    }

    @Test
    void aNewerSearchIsTheOneThatIsShown() {
        CassettesBench bench = narrow();
        bench.view().limits().find();
        bench.view().limits().field("LARGEST_FROM").setText("44");
        bench.view().limits().field("LARGEST_TO").setText("44");
        bench.view().limits().find();
        bench.step();
        assertEquals(Optional.empty(), bench.view().shown());
        bench.step();
        assertEquals(
                44,
                bench.view()
                        .shown()
                        .orElseThrow()
                        .chosen()
                        .orElseThrow()
                        .cassette()
                        .largest()
                        .teeth());
    }

    @Test
    void settingAFoundCassetteIsOneEditAndItIsJudgedAgain() {
        CassettesBench bench = narrow();
        bench.view().limits().find();
        bench.workOff();
        Candidate chosen = bench.view().shown().orElseThrow().chosen().orElseThrow();
        press(bench, "set");
        assertEquals(List.of("set found cogs in C-002"), bench.edits());
        assertEquals(
                chosen.cogs(), concept(bench.definition(), C2).cogs().toString().replaceAll("[\\[\\],]", ""));
        bench.workOff();
        assertEquals(
                chosen.cassette(),
                bench.view().shown().orElseThrow().finding().today().cassette());
        press(bench, "keep");
        assertEquals(
                concept(bench.definition(), C2).cogs(),
                concept(bench.definition(), C4).cogs());
        assertEquals("1 × 11, 10 to 46 teeth", concept(bench.definition(), C4).title());
    }

    /** The edit comes between finding and judging. */
    @Test
    void whatWasJudgedBeforeAnEditIsJudgedAgain() {
        CassettesBench bench = narrow();
        bench.view().limits().find();
        bench.step();
        press(bench, "set"); // while judging waits
        bench.workOff();
        Finding finding = bench.view().shown().orElseThrow().finding();
        assertSame(bench.definition(), finding.judgedOn());
        assertTrue(finding.isWhole());
    }

    /** Through the session that saves it: set, undo, keep, undo. */
    @Test
    void undoBringsBackWhatWas() throws IOException {
        Path folder = temp.resolve("tarnbeck");
        copy(Sample.FOLDER, folder);
        SessionOpening opening = Session.open(folder, CassettesBench.CATALOGUE);
        try (Session session =
                assertInstanceOf(SessionOpening.Opened.class, opening).session()) {
            Definition before = session.definition();
            session.edit(Optional.of("set"), definition -> CogChange.in(definition, C2, OTHER));
            assertEquals(
                    List.of(10, 12, 14, 16, 19, 22, 26, 30, 35, 40, 47),
                    concept(session.definition(), C2).cogs());
            session.undo().orElseThrow();
            assertEquals(concept(before, C2), concept(session.definition(), C2));
            session.edit(Optional.of("keep"), definition -> CassetteEdits.keep(definition, C2, OTHER, "kept"));
            assertEquals(concept(before, C2), concept(session.definition(), C2));
            assertEquals(47, concept(session.definition(), C4).cogs().get(10));
            session.undo().orElseThrow();
            assertEquals(Optional.empty(), session.definition().get(C4));
            Found other = new Found(OTHER, Measures.of(OTHER, SprocketMass.ASSUMED));
            Cassette today = new Cassette(
                    concept(before, C2).cogs().stream().map(Cog::new).toList());
            session.edit(
                    Optional.of("draft"),
                    definition -> CassetteEdits.draft(
                            definition,
                            C2,
                            List.of(Objective.LARGEST_STEP, Objective.MASS),
                            new Found(today, Measures.of(today, SprocketMass.ASSUMED)),
                            List.of(other)));
            Decision draft = session.definition()
                    .get(before.nextId(RecordKinds.DECISION), Decision.class)
                    .orElseThrow();
            assertEquals(2, draft.options().size());
            assertEquals("", draft.choice(), "people choose");
            session.undo().orElseThrow();
            assertEquals(Optional.empty(), session.definition().get(draft.id()));
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                Path there = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(there);
                } else {
                    Files.copy(path, there);
                }
            }
        }
    }

    /** The sample leaves 36/38 of C-001 out of use; without a cog of 38 there is no such gear. */
    @Test
    void gearsThatAreGoneAreNoLongerLeftOut() {
        Definition set = CogChange.in(Sample.definition(), C1, Cassette.of(11, 12, 14, 16, 18, 21, 24, 28, 32, 37));
        assertEquals(List.of(), concept(set, C1).excludedGears());
        assertFalse(concept(Sample.definition(), C1).excludedGears().isEmpty());
    }
}
