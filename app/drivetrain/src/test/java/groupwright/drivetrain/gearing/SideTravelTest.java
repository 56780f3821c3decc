package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.drivetrain.gearing.SideTravel.Extra;
import java.util.List;
import org.junit.jupiter.api.Test;

class SideTravelTest {
    private static final Cassette THREE = Cassette.of(10, 12, 14);

    @Test
    void spacingsOvershootAndHangerAddUp() {
        assertEquals(2 * 3.65 + 1.5 + 2 + 0.8, SideTravel.mm(THREE, 3.65, new Extra(1.5, 2, 0.8)), 1e-12);
        assertEquals(7.5, SideTravel.mm(List.of(3.5, 4.0), Extra.NONE), 1e-12);
        assertEquals(SideTravel.mm(THREE, 3.9, Extra.NONE), SideTravel.mm(List.of(3.9, 3.9), Extra.NONE));
    }

    @Test
    void aSingleCogNeedsOnlyTheExtra() {
        assertEquals(3, SideTravel.mm(Cassette.of(16), 3.9, new Extra(1, 1, 1)));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> SideTravel.mm(THREE, 0, Extra.NONE));
        assertThrows(IllegalArgumentException.class, () -> SideTravel.mm(List.of(3.9, Double.NaN), Extra.NONE));
        assertThrows(IllegalArgumentException.class, () -> new Extra(-1, 0, 0));
    }
}
