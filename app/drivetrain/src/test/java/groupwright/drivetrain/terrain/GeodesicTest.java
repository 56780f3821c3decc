package groupwright.drivetrain.terrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class GeodesicTest {
    private static final double VINCENTY_M = 5e-4; // the accuracy the 1975 paper claims

    @ParameterizedTest(name = "{0} {1} to {2} {3}: {4} m")
    @CsvSource(textBlock = """
            # Flinders Peak to Buninyong, worked example of the Geodetic Datum of Australia manual (GRS 80; the two
            # ellipsoids differ by 0.1 mm in the polar radius), as restated in published test code: 54 972.271 m
            -37.95103341666667, 144.42486788888889, -37.65282113888889, 143.92649552777778, 54972.271
            # Land's End to John o' Groats and Berkeley to Port Moresby, values in published test code
            50.06632, -5.71475, 58.64402, -3.07009, 969954.1663
            37.87622, -122.23558, -9.4047, 147.1597, 10700471.9552
            # one degree of the equator: a * pi / 180, exact; a quarter of a meridian: 10 001 965.729 m (from memory)
            0, 0, 0, 1, 111319.490793
            0, 0, 90, 0, 10001965.729
            0, 179.5, 0, -179.5, 111319.490793
            """)
    void publishedDistances(double lat1, double lon1, double lat2, double lon2, double metres) {
        assertEquals(metres, Geodesic.metres(new Place(lat1, lon1), new Place(lat2, lon2)), VINCENTY_M);
    }

    @Test
    void almostOppositePlacesHaveADistance() {
        // the usual example on which the iteration of 1975 does not settle; 19 936 288.579 m (from memory)
        double metres = Geodesic.metres(new Place(0, 0), new Place(0.5, 179.7));
        assertEquals(19_936_288.579, metres, 0.006 * metres);
        assertEquals(20_003_931, Geodesic.metres(new Place(0, 0), new Place(0, 180)), 0.006 * 2e7); // over a pole
    }

    @Test
    void haversineOfAQuarterCircle() {
        assertEquals(6_371_008.8 * Math.PI / 2, Geodesic.haversineMetres(new Place(0, 0), new Place(90, 0)), 1e-6);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void bothWaysAreEquallyLongAndNearTheSphere(long seed) {
        var random = new Random(seed);
        var one = new Place(Seeds.between(random, -85, 85), Seeds.between(random, -180, 180));
        var other = new Place(
                one.latitudeDeg() + Seeds.between(random, -1e-3, 1e-3),
                Math.max(-180, Math.min(180, one.longitudeDeg() + Seeds.between(random, -1e-3, 1e-3))));
        double metres = Geodesic.metres(one, other);
        assertEquals(metres, Geodesic.metres(other, one), 1e-6);
        assertEquals(0, Geodesic.metres(one, one));
        assertEquals(Geodesic.haversineMetres(one, other), metres, 0.006 * metres);
        assertTrue(metres > 0);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Place(90.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Place(0, Double.NaN));
    }
}
