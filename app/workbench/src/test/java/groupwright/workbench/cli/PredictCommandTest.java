package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PredictCommandTest {
    private static final Path SAMPLE =
            Path.of("../../samples/tarnbeck").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    @BeforeEach
    void copy() {
        SmallProject.copied(SAMPLE, folder.resolve("tarnbeck"));
        SmallProject.below(folder);
    }

    private Run ride(String line) {
        return Run.in(folder, ("predict " + line).split(" "));
    }

    private JsonNode json(String line) throws IOException {
        return new ObjectMapper()
                .readTree(Run.in(folder, (line + " --json").split(" ")).out());
    }

    /** The table says what the figures say. */
    @ParameterizedTest
    @CsvSource({
        "average-speed, averageSpeed_kmh",
        "cadence-comfort, cadenceComfort_pct",
        "shift-actions, shiftActions_per_h",
        "cogs-shifted, cogsShifted_per_h",
        "front-shifts, frontShifts_per_h",
        "walking-time, walkingTime_pct",
        "grinding-time, grindingTime_pct",
        "ride-work, work_kJ"
    })
    void aRideHasTheNumbersOfItsFigures(String figure, String field) throws IOException {
        JsonNode ride = json("predict tarnbeck C-001 --riders G-002 --length 15 --headwind 8")
                .at("/rides/0");
        JsonNode asked = new ObjectMapper()
                .readTree(Run.in(
                                folder,
                                "figures",
                                "tarnbeck",
                                "--figure",
                                figure + " C-001 G-002 ride-length=15 headwind=8",
                                "--json")
                        .out());
        assertEquals(asked.at("/figures/0/value").asDouble(), ride.get(field).asDouble(), 0);
    }

    @Test
    void theTableHasARowForEachPair() {
        Run run = ride("tarnbeck C-003 lead --riders G-003,G-001 --length 10");
        assertEquals(
                "hills of each group's terrain: 10 km",
                run.out().lines().findFirst().orElseThrow());
        assertEquals(
                "[C-002 G-001, C-002 G-003, C-003 G-001, C-003 G-003]",
                run.out()
                        .lines()
                        .filter(line -> line.startsWith("C-"))
                        .map(line -> line.split(" +")[0] + " " + line.split(" +")[1])
                        .toList()
                        .toString());
        assertEquals(0, run.exit());
    }

    @Test
    void whatARideLacksIsToldBelow() {
        Run run = ride("small C-001 --riders G-001");
        assertTrue(
                run.out().contains("\nno ride of C-001 G-001: G-001.cadenceLeast_rpm: write the cadence"), run.out());
        assertTrue(run.out().contains("G-001.terrain: write how much"), run.out());
        assertEquals(0, run.exit());
    }

    /** A track due north; a degree of the meridian at 47° is 111.17 km on the ellipsoid of WGS 84 (geodesy tables). */
    private void track(String name, double riseM, int points) throws IOException {
        StringBuilder gpx = new StringBuilder("<gpx version=\"1.1\"><trk><trkseg>");
        for (int i = 0; i < points; i++) {
            gpx.append(String.format(
                    Locale.ROOT,
                    "<trkpt lat=\"%.6f\" lon=\"8\"><ele>%.2f</ele></trkpt>",
                    47 + i * 1e-4,
                    400 + i * riseM));
        }
        Files.writeString(folder.resolve(name), gpx.append("</trkseg></trk></gpx>"));
    }

    @Test
    void aTrackIsRiddenInPlaceOfTheTerrain() throws IOException {
        track("flat.gpx", 0, 501);
        track("up.gpx", 0.556, 501); // 5 % of 11.117 m
        JsonNode flat = json("predict tarnbeck C-002 --riders G-002 --gpx flat.gpx");
        JsonNode up = json("predict tarnbeck C-002 --riders G-002 --gpx up.gpx");
        assertEquals(5.5585, flat.at("/track/length_km").asDouble(), 0.003);
        assertEquals(278, up.at("/track/ascent_m").asDouble(), 0.1);
        assertEquals(0, flat.at("/track/ascent_m").asDouble(), 1e-9);
        assertTrue(up.at("/rides/0/averageSpeed_kmh").asDouble()
                < flat.at("/rides/0/averageSpeed_kmh").asDouble() / 1.5);
        // 94.5 kg lifted 278 m, less speed: what is done at the crank is more by the losses
        assertTrue(up.at("/rides/0/work_kJ").asDouble() > 94.5 * 9.81 * 0.278 / 0.96);
        Schemas.PREDICT.accepts(Run.in(folder, "predict", "tarnbeck", "--gpx", "up.gpx", "--json")
                .out());
        assertTrue(ride("tarnbeck --gpx up.gpx --headwind 5")
                .out()
                .startsWith("up.gpx: 5.6 km, 278 m up, headwind 5 km/h\n"));
    }

    @Test
    void pointsLeftOutAreToldAndTheRestIsRidden() throws IOException {
        track("gap.gpx", 0, 200);
        Path file = folder.resolve("gap.gpx");
        Files.writeString(file, Files.readString(file).replaceFirst("<ele>400.00</ele>", ""));
        Run run = ride("tarnbeck C-002 --riders G-002 --gpx gap.gpx");
        assertEquals(
                "gap.gpx: line 1: a point has no elevation and is left out; export the track with elevations.\n",
                run.err());
        assertTrue(run.out().contains("C-002    G-002"), run.out());
        assertEquals(2, run.exit());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            <gpx                                  | bad.gpx: line 1: the file is no XML; export the track again as GPX 1.1.
            <html></html>                         | bad.gpx: line 1: the file is no GPX 1.0 or 1.1 (html); export the track again as GPX 1.1.
            <!DOCTYPE gpx><gpx version="1.1"/>    | bad.gpx: line 1: the file has a document type declaration, which is not read; take out the line with DOCTYPE.
            <gpx version="1.1"/>                  | bad.gpx: line 1: there is no point of a track or route to use; export a recorded track.
            <gpx version="1.1"><rte><rtept lat="1" lon="1"><ele>1</ele></rtept></rte></gpx> | bad.gpx: the track is too short for a profile, it needs at least 5.0 m.
            """)
    void aBadTrackIsOneSentence(String content, String sentence) throws IOException {
        Files.writeString(folder.resolve("bad.gpx"), content);
        Run run = ride("tarnbeck --gpx bad.gpx");
        assertAll(
                () -> assertEquals(sentence + "\n", run.err()),
                () -> assertEquals("", run.out()),
                () -> assertEquals(2, run.exit()));
    }

    @ParameterizedTest(name = "predict {0}")
    @CsvSource(delimiter = '|', textBlock = """
            tarnbeck C-009              | there is no concept C-009 in this project; it has C-000, C-001, C-002, C-003.
            tarnbeck --riders G-009     | there is no rider group G-009 in this project; it has G-001, G-002, G-003.
            tarnbeck --length 301       | ride-length: 301 is out of its limits; write 1 to 300.
            tarnbeck --headwind 61      | headwind: 61 is out of its limits; write -60 to 60.
            tarnbeck --gpx tarnbeck     | tarnbeck: is no file; name a recorded track as GPX.
            """)
    void badInputIsOneSentence(String line, String sentence) {
        Run run = ride(line);
        assertAll(() -> assertEquals(sentence + "\n", run.err()), () -> assertEquals(2, run.exit()));
    }
}
