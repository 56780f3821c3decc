package groupwright.drivetrain.terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProfilesTest {
    private static final List<GradeBand> HILLS = List.of(
            new GradeBand(-0.3, -0.02, 30),
            new GradeBand(0.05, 0.08, 20),
            new GradeBand(-0.02, 0.02, 40),
            new GradeBand(0.02, 0.05, 10));

    @Test
    void bandsComeAsHillsThatReturnToTheStart() {
        Profile profile = Profiles.ofBands(6000, 2000, HILLS);
        assertEquals(12, profile.pieces().size());
        assertEquals(6000, profile.lengthM(), 1e-6);
        assertEquals(0, profile.endElevationM(), 1e-6);
        List<Piece> hill = profile.pieces().subList(0, 4);
        assertEquals(
                List.of(800.0, 200.0, 400.0, 600.0),
                hill.stream().map(Piece::lengthM).toList());
        assertEquals(0, hill.get(0).grade());
        assertEquals(0.035, hill.get(1).grade(), 1e-12);
        assertEquals(0.065, hill.get(2).grade(), 1e-12);
        // by hand: (200 sin atan 0.035 + 400 sin atan 0.065) / 600 is the sine of the descent
        double sine = (200 * Math.sin(Math.atan(0.035)) + 400 * Math.sin(Math.atan(0.065))) / 600;
        assertEquals(-Math.tan(Math.asin(sine)), hill.get(3).grade(), 1e-12);
        assertEquals(hill, profile.pieces().subList(8, 12));
    }

    @Test
    void descentsStayWithinTheirBand() {
        Profile down = Profiles.ofBands(1000, 2000, List.of(new GradeBand(-0.05, -0.02, 1)));
        assertEquals(List.of(-0.02), down.pieces().stream().map(Piece::grade).toList());
        Profile up = Profiles.ofBands(1000, 2000, List.of(new GradeBand(-0.05, -0.02, 1), new GradeBand(0.1, 0.1, 1)));
        assertEquals(-0.05, up.pieces().get(1).grade(), 1e-12);
        Profile flat = Profiles.ofBands(1000, 2000, List.of(new GradeBand(-0.02, 0.02, 1)));
        assertEquals(0, flat.ascentM());
    }

    @Test
    void aTraceBecomesPiecesWithItsRise() {
        List<TracePoint> points = new ArrayList<>();
        for (int i = 0; i <= 200; i++) {
            points.add(TracePoint.of(5.0 * i, Math.min(i, 100) * 0.3)); // 500 m at sine 6 %, then level
        }
        Profile profile = Profiles.ofTrace(List.of(new Stretch(points)), Smoothing.USUAL);
        assertEquals(100, profile.pieces().size());
        assertEquals(1000, profile.lengthM(), 1e-9);
        assertEquals(30, profile.endElevationM(), 1e-9);
        assertEquals(Math.tan(Math.asin(0.06)), profile.pieces().get(20).grade(), 1e-12);
        assertEquals(0, profile.pieces().get(80).grade(), 1e-12);
    }

    @Test
    void smoothingTakesNoiseAway() {
        List<TracePoint> points = new ArrayList<>();
        var random = new Random(1);
        for (int i = 0; i <= 1000; i++) {
            points.add(TracePoint.of(5.0 * i, random.nextInt(2) * 0.5));
        }
        List<Stretch> noisy = List.of(new Stretch(points));
        double raw = Profiles.ofTrace(noisy, new Smoothing(0, 5)).ascentM();
        double usual = Profiles.ofTrace(noisy, Smoothing.USUAL).ascentM();
        double wide = Profiles.ofTrace(noisy, new Smoothing(400, 10)).ascentM();
        assertEquals(Ascent.rawM(noisy.get(0)), raw, 1e-6);
        assertTrue(usual < raw / 3);
        assertTrue(wide < usual / 3);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void bandsKeepTheirShares(long seed) {
        var random = new Random(seed);
        List<GradeBand> bands = new ArrayList<>();
        double from = -0.3;
        for (int i = 0; i < 6; i++) {
            double to = from + Seeds.between(random, 0.01, 0.1);
            bands.add(new GradeBand(from, to, Seeds.between(random, 1, 50)));
            from = to;
        }
        double length = Seeds.between(random, 500, 200_000);
        Profile profile = Profiles.ofBands(length, Seeds.between(random, 100, 5000), bands);
        assertEquals(length, profile.lengthM(), 1e-6 * length);
        double shares = bands.stream().mapToDouble(GradeBand::share).sum();
        for (GradeBand band : bands) {
            double inside = profile.pieces().stream()
                    .filter(piece -> piece.grade() >= band.fromGrade() && piece.grade() < band.toGrade())
                    .mapToDouble(Piece::lengthM)
                    .sum();
            // all descents may lie at the steep or gentle end of their bands, which belongs to a neighbour as well
            if (!band.descends()) {
                assertTrue(inside >= length * band.share() / shares * (1 - 1e-9));
            }
        }
    }

    @Test
    void nonsenseIsRefusedInWords() {
        var empty = assertThrows(IllegalArgumentException.class, () -> Profile.of());
        assertEquals("a profile needs at least one piece of road, enter terrain or climbs", empty.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Profiles.ofBands(1000, 2000, List.of()));
        assertThrows(IllegalArgumentException.class, () -> Profiles.ofBands(0, 2000, HILLS));
        assertThrows(IllegalArgumentException.class, () -> Profiles.ofBands(Double.NaN, 2000, HILLS));
        assertThrows(IllegalArgumentException.class, () -> Profile.of(new Piece(5_000_001, 0)));
        assertThrows(IllegalArgumentException.class, () -> new Piece(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new GradeBand(0.1, 0.05, 1));
        assertThrows(IllegalArgumentException.class, () -> new Stretch(List.of()));
        assertThrows(
                IllegalArgumentException.class, () -> new Stretch(List.of(TracePoint.of(5, 0), TracePoint.of(4, 0))));
        var wall = List.of(new Stretch(List.of(TracePoint.of(0, 0), TracePoint.of(10, 9))));
        var steep = assertThrows(IllegalArgumentException.class, () -> Profiles.ofTrace(wall, new Smoothing(0, 10)));
        assertTrue(steep.getMessage().contains("at 10 m is steeper than 100 %"));
        var point = List.of(new Stretch(List.of(TracePoint.of(0, 0))));
        assertThrows(IllegalArgumentException.class, () -> Profiles.ofTrace(point, Smoothing.USUAL));
    }
}
