package groupwright.drivetrain.terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of the recorded rides, against those of an independent program in ridedata/README.md. */
class ReferenceFiguresTest {
    private static final List<Double> LIMITS = List.of(-0.02, 0.02, 0.05, 0.1);

    @ParameterizedTest(name = "{0}, split {1}")
    @CsvSource(textBlock = """
            # file, split at pauses, distance m, ascent raw, descent raw, 3 m dead band, 15 s mean
            road_hilly.csv,         false, 57567.2, 1341.4, 1331.6, 1257.2, 1280.2
            road_cafe_stop.csv,     false, 51938.8,  812.2,  573.0,  580.6,  668.4
            road_cafe_stop.csv,     true,  51938.8,  562.8,  573.0,  329.8,  418.0
            mtb_shift_log.csv,      false, 11138.0,  362.6,  366.6,  304.2,  342.9
            road_hilly_excerpt.gpx, false, 21926.7,  415.4,  596.8,  370.2,  371.9
            """)
    void distanceAndAscent(
            String file, boolean split, double distance, double raw, double descent, double band, double mean) {
        List<Stretch> whole = stretches(file);
        List<Stretch> parts = split ? split(whole) : whole;
        assertEquals(distance, sum(whole, Stretch::lengthM), 0.2); // mtb: the first sample lacks an altitude
        assertEquals(raw, sum(parts, Ascent::rawM), 0.1);
        assertEquals(descent, sum(parts, Ascent::descentM), 0.1);
        assertEquals(band, sum(parts, stretch -> Ascent.deadBandM(stretch, 3)), 0.1);
        assertEquals(mean, sum(parts, stretch -> Ascent.rawM(stretch.meanOverTime(7))), 0.1);
    }

    @Test
    void walkWithoutTimes() {
        List<Stretch> walk = stretches("karst_hills_walk.gpx");
        assertEquals(
                List.of(297, 101, 291),
                walk.stream().map(part -> part.points().size()).toList());
        assertEquals(10835.3, sum(walk, Stretch::lengthM), 0.1);
        assertEquals(548.0, sum(walk, Ascent::rawM), 0.1);
        assertEquals(454.7, sum(walk, part -> Ascent.deadBandM(part, 3)), 0.1);
        assertShares(GradeShares.ofDistance(walk, 50, LIMITS), 52.26, 20.21, 4.22, 10.46, 12.86);
    }

    @ParameterizedTest(name = "{0}, {2} m, split {1}")
    @CsvSource(textBlock = """
            # file, split, window m, shares of distance in %: below -2, -2 to 2, 2 to 5, 5 to 10, from 10 %
            road_hilly.csv,         false,  50, 37.66, 25.57, 13.08, 21.53, 2.16
            road_hilly.csv,         false, 100, 37.43, 25.91, 13.02, 21.66, 1.98
            road_cafe_stop.csv,     false,  50, 17.21, 67.08, 11.72,  3.80, 0.18
            road_cafe_stop.csv,     true,   50, 17.23, 67.16, 11.75,  3.80, 0.06
            mtb_shift_log.csv,      false, 100, 30.14, 25.96, 20.47, 19.62, 3.81
            road_hilly_excerpt.gpx, false,  50, 40.80, 29.57, 10.40, 18.43, 0.80
            """)
    void gradeSharesOfDistance(
            String file, boolean split, double window, double a, double b, double c, double d, double e) {
        List<Stretch> parts = split ? split(stretches(file)) : stretches(file);
        assertShares(GradeShares.ofDistance(parts, window, LIMITS), a, b, c, d, e);
    }

    @ParameterizedTest(name = "{0}, {2} m, split {1}")
    @CsvSource(textBlock = """
            # the same, shares of moving time in %
            road_hilly.csv,         false,  50, 22.07, 21.33, 15.98, 35.19, 5.42
            road_cafe_stop.csv,     true,   50, 14.51, 64.98, 14.77,  5.64, 0.10
            road_hilly_excerpt.gpx, false, 100, 26.01, 26.98, 14.92, 31.47, 0.63
            """)
    void gradeSharesOfMovingTime(
            String file, boolean split, double window, double a, double b, double c, double d, double e) {
        List<Stretch> parts = split ? split(stretches(file)) : stretches(file);
        assertShares(GradeShares.ofMovingTime(parts, window, LIMITS), a, b, c, d, e);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            # tolerance in percentage points: 0.5 to 7, the spread between 50 and 100 m, largest on flat rides
            road_hilly.csv,         0.6, 37.66, 25.57, 13.08, 21.53, 2.16
            road_cafe_stop.csv,     3.0, 17.23, 67.16, 11.75,  3.80, 0.06
            road_hilly_excerpt.gpx, 1.0, 40.80, 29.57, 10.40, 18.43, 0.80
            """)
    void theProfileHasTheGradesOfTheTrack(
            String file, double points, double a, double b, double c, double d, double e) {
        Profile profile = Profiles.ofTrace(split(stretches(file)), Smoothing.USUAL);
        double[] shares = new double[5];
        for (Piece piece : profile.pieces()) {
            int band = (int)
                    LIMITS.stream().filter(limit -> piece.grade() >= limit).count();
            shares[band] += 100 * piece.lengthM() / profile.lengthM();
        }
        double[] expected = {a, b, c, d, e};
        for (int i = 0; i < shares.length; i++) {
            assertEquals(expected[i], shares[i], points, "band " + i);
        }
    }

    @Test
    void thePauseIsNoWall() {
        // README: the altimeter jumps by 249 m in the stop; unless pauses split the profile that is a wall of 6.5 m
        List<Stretch> whole = stretches("road_cafe_stop.csv");
        Profile split = Profiles.ofTrace(split(whole), Smoothing.USUAL);
        assertTrue(split.pieces().stream().allMatch(piece -> piece.grade() < 0.2));
        assertTrue(split.lengthM() > 51_800);
        assertTrue(split.ascentM() > 329.8 && split.ascentM() < 562.8); // between the 3 m dead band and raw
        boolean wall;
        try {
            wall = Profiles.ofTrace(whole, Smoothing.USUAL).pieces().stream().anyMatch(piece -> piece.grade() > 0.5);
        } catch (IllegalArgumentException steep) {
            wall = steep.getMessage().contains("steeper than 100 %");
        }
        assertTrue(wall);
    }

    @Test
    void ellipsoidAndSphereDifferLittleOverARide() {
        // in these latitudes the two differ by less than the 0.6 % of the flattening
        List<Stretch> sphere = stretches("road_hilly_excerpt.gpx");
        List<Stretch> ellipsoid = RideData.gpx("road_hilly_excerpt.gpx").segments().stream()
                .map(segment -> segment.stretch(Geodesic::metres))
                .toList();
        double metres = sum(ellipsoid, Stretch::lengthM);
        assertEquals(sum(sphere, Stretch::lengthM), metres, 0.006 * metres);
        // the recorder's own distance over the same seconds, time_s 139 to 2838 of road_hilly.csv
        List<RideData.Sample> samples = RideData.samples("road_hilly.csv");
        assertEquals(samples.get(2838).distanceM() - samples.get(139).distanceM(), metres, 0.01 * metres);
    }

    private static List<Stretch> stretches(String file) {
        return file.endsWith(".csv")
                ? List.of(RideData.stretch(file))
                : RideData.gpx(file).segments().stream()
                        .map(segment -> segment.stretch(Geodesic::haversineMetres))
                        .toList();
    }

    private static List<Stretch> split(List<Stretch> stretches) {
        List<Stretch> parts = new ArrayList<>();
        stretches.forEach(stretch -> parts.addAll(stretch.splitAtPauses(Stretch.PAUSE_S)));
        return parts;
    }

    private static double sum(List<Stretch> stretches, ToDoubleFunction<Stretch> figure) {
        return stretches.stream().mapToDouble(figure).sum();
    }

    private static void assertShares(List<Double> shares, double... expectedPct) {
        for (int i = 0; i < expectedPct.length; i++) {
            assertEquals(expectedPct[i], 100 * shares.get(i), 0.011, "band " + i); // printed with two digits
        }
    }
}
