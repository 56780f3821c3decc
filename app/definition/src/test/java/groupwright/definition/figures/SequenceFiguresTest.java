package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.ExampleProject;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Series;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shift sequence, overlap, older measures and chain line, by hand: plain fractions and one right triangle. */
class SequenceFiguresTest {
    private static Asking of(String rings, String cogs, String more) {
        return Asking.about(
                Asking.record("C-001", "\"rings\": [%s], \"cogs\": [%s]%s".formatted(rings, cogs, more)),
                Asking.record("G-001", "\"rollOut_mm\": 2000, \"crankLength_mm\": 170"),
                Asking.record("B-001", "\"chainstay_mm\": 400, \"cassetteCentre_mm\": 45"));
    }

    private static String shown(Asking asking, String text) {
        return ValueText.of(asking.answer(text));
    }

    @Test
    void theSequenceGoesUpTheRatios() {
        // 20/20 = 1, 30/20 = 1.5, 20/10 = 2, 30/10 = 3
        Asking asking = of("30, 20", "10, 20", "");
        assertEquals("20/20=1 30/20=1.5 20/10=2 30/10=3", shown(asking, "gear-ratios C-001"));
        assertEquals(
                "20/20-30/20=50 30/20-20/10=33.333333333333336 20/10-30/10=50", shown(asking, "shift-sequence C-001"));
        // 60 · 1/1.5, 60 · 1.5/2, 60 · 2/3
        assertEquals(
                "20/20-30/20=40 30/20-20/10=45 20/10-30/10=40",
                shown(asking, "shift-sequence-cadence C-001 cadence=60"));
        assertEquals(100 * (2 / 1.5 - 1), asking.value("overlap C-001"), 1e-12);
        assertEquals("20-30", asking.quantity("overlap C-001").remark());
        // only 20/10 = 2 lies between 1.5 and 3; ln(2/1.5) = 0.288 is nearer than ln(3/2) = 0.405: one cog
        assertEquals(1, asking.value("made-up-shifts C-001"));
        assertEquals("20/10-30/20", asking.quantity("made-up-shifts C-001").remark());
    }

    @Test
    void ringsFarApartLeaveAGap() {
        Asking asking = of("50, 20", "15, 20", ""); // 20/15 = 1.333, 50/20 = 2.5
        assertEquals(100 * (20 / 15.0 / 2.5 - 1), asking.value("overlap C-001"), 1e-12);
        assertEquals("C-001.rings", missing(asking, "made-up-shifts C-001"));
    }

    @Test
    void ofThreeRingsTheLeastOverlapCounts() {
        Asking asking = of("40, 30, 20", "10, 20", ""); // 20-30: 2 / 1.5; 30-40: 3 / 2
        assertEquals(100 * (2 / 1.5 - 1), asking.value("overlap C-001"), 1e-12);
        assertEquals("20-30", asking.quantity("overlap C-001").remark());
    }

    @Test
    void oneGearHasNoSequence() {
        Asking asking = of("30", "15", "");
        assertEquals(List.of(), ((Series) asking.answer("shift-sequence C-001")).values());
        assertEquals(List.of(), ((Series) asking.answer("shift-sequence-cadence C-001")).values());
        assertEquals("30/15=2", shown(asking, "gear-ratios C-001"));
        assertEquals("C-001.rings", missing(asking, "overlap C-001"));
        assertEquals("C-001.rings", missing(asking, "made-up-shifts C-001"));
    }

    @Test
    void gearInchesAndGainRatio() {
        Asking asking = of("30", "15, 30", "");
        double diameterMm = 2000 / Math.PI;
        assertEquals(diameterMm / 25.4, asking.value("lowest-gear-inches C-001 G-001"), 1e-9);
        assertEquals(2 * diameterMm / 25.4, asking.value("highest-gear-inches C-001 G-001"), 1e-9);
        assertEquals(diameterMm / 340, asking.value("lowest-gain-ratio C-001 G-001"), 1e-9);
        assertEquals(2 * diameterMm / 340, asking.value("highest-gain-ratio C-001 G-001"), 1e-9);
    }

    @Test
    void aRightTriangleBendsTheChain() {
        // cogs at 41, 45, 49 mm from the inside out, the ring at 45 mm: 4 mm over 400 mm
        Asking asking = of("30", "10, 20, 30", ", \"cogSpacing_mm\": [4, 4], \"frontChainLine_mm\": 45");
        double bent = Math.toDegrees(Math.atan(0.01));
        Series angles = (Series) asking.answer("chain-angles C-001 B-001");
        assertEquals(
                List.of("30/30", "30/20", "30/10"),
                angles.values().stream().map(Series.At::at).toList());
        assertEquals(bent, angles.values().get(0).value(), 1e-9);
        assertEquals(0, angles.values().get(1).value(), 1e-9);
        assertEquals(bent, asking.value("chain-angle C-001 B-001"), 1e-9);
        assertEquals("30/30", asking.quantity("chain-angle C-001 B-001").remark());
        assertEquals(1, asking.value("usable-gears C-001 B-001 chain-angle=0.5"));
        assertEquals(3, asking.value("usable-gears C-001 B-001 chain-angle=0.6"));
    }

    /** Two rings 6 mm apart about 45 mm; three cogs 4 mm apart about the middle of the cassette, 45 mm. */
    @Test
    void ringsAndCogsStandEvenlyAboutTheirMiddles() {
        Asking asking = of(
                "30, 20", "10, 20, 30", ", \"cogSpacing_mm\": [4], \"ringSpacing_mm\": 6, \"frontChainLine_mm\": 45");
        ChainLines lines = ChainLines.of((Series) asking.answer("chain-lines C-001 B-001"));
        assertEquals(
                new ChainLines(
                        List.of(new ChainLines.Wheel(20, 42), new ChainLines.Wheel(30, 48)),
                        List.of(
                                new ChainLines.Wheel(10, 49),
                                new ChainLines.Wheel(20, 45),
                                new ChainLines.Wheel(30, 41))),
                lines);
    }

    /** The ring at 41 mm stands before the largest cog: the lowest gear is straight and the highest bent most, 8 mm. */
    @Test
    void theLowestGearNeedNotBeTheWorst() {
        Asking asking = of("30", "10, 20, 30", ", \"cogSpacing_mm\": [4], \"frontChainLine_mm\": 41");
        assertEquals(0, asking.value("chain-angle C-001 B-001"), 1e-9);
        assertEquals(bentDeg(8, 30, 10), asking.value("chain-angle C-001 B-001 of=worst"), 1e-9);
        assertEquals(
                "30/10", asking.quantity("chain-angle C-001 B-001 of=worst").remark());
    }

    @Test
    void oneRingAndOneCogNeedNoSpacing() {
        Asking asking = of("30", "15", ", \"frontChainLine_mm\": 49");
        assertEquals(bentDeg(4, 30, 15), asking.value("chain-angle C-001 B-001"), 1e-9);
    }

    /** Two right triangles: the free span under a chainstay of 400 mm, and the bend over that span. */
    private static double bentDeg(double asideMm, int ring, int cog) {
        double radii = 6.35 / Math.sin(Math.PI / ring) - 6.35 / Math.sin(Math.PI / cog);
        return Math.toDegrees(Math.atan(asideMm / Math.sqrt(400 * 400 - radii * radii)));
    }

    @Test
    void noGearMayBeLeft() {
        Asking asking = of("30", "15", ", \"frontChainLine_mm\": 49");
        assertEquals(0, asking.value("usable-gears C-001 B-001 chain-angle=0.1"));
    }

    @ParameterizedTest
    @CsvSource({
        "chain-angle C-901 B-901, C-901.frontChainLine_mm",
        "chain-angle C-901 B-901, C-901.ringSpacing_mm",
        "chain-angles C-901 B-901, B-901.chainstay_mm",
        "usable-gears C-901 B-901 chain-angle=1, B-901.cassetteCentre_mm",
        "lowest-gain-ratio C-901 G-901, G-901.crankLength_mm"
    })
    void anEmptyFieldIsNamed(String text, String field) {
        Definition emptied =
                ExampleProject.definition().with(Address.parse(field).orElseThrow(), Optional.empty());
        assertEquals(field, missing(new Asking(emptied), text));
    }

    /** Cogs at 49.5, 45.5 and 40.5 mm, the middle half way between the outermost. */
    @Test
    void spacingsMayDiffer() {
        Asking asking = of("30", "10, 20, 30", ", \"cogSpacing_mm\": [4, 5], \"frontChainLine_mm\": 45");
        assertEquals(bentDeg(4.5, 30, 30), asking.value("chain-angle C-001 B-001"), 1e-9);
        Series angles = (Series) asking.answer("chain-angles C-001 B-001");
        assertEquals(bentDeg(0.5, 30, 20), angles.values().get(1).value(), 1e-9);
        assertEquals(bentDeg(4.5, 30, 10), angles.values().get(2).value(), 1e-9);
    }

    @Test
    void noSpacingIsAskedForInWords() {
        Asking asking = of("30", "10, 20, 30", ", \"frontChainLine_mm\": 45");
        List<MissingInput> inputs = asking.missing("chain-angle C-001 B-001");
        assertEquals("C-001.cogSpacing_mm", inputs.get(0).address().toString());
        assertTrue(inputs.get(0).remedy().contains("from cog to cog"));
    }

    private static String missing(Asking asking, String text) {
        List<MissingInput> inputs = asking.missing(text);
        assertEquals(1, inputs.size(), inputs.toString());
        return inputs.get(0).address().toString();
    }
}
