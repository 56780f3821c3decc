package groupwright.drivetrain.mass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SprocketMassTest {
    private static final SprocketMass MIXED = new SprocketMass(List.of(
            new SprocketMass.Group(0, 2, 0.5, PlateMaterial.STEEL),
            new SprocketMass.Group(12, 2, 0.5, PlateMaterial.TITANIUM),
            new SprocketMass.Group(30, 2, 0.5, PlateMaterial.ALUMINIUM)));

    // Source: densities of Callister, Materials Science and Engineering, Table B.1 (titanium from memory); D² = p²/sin²
    // with exact sines: 6 teeth D = 2 p, 12 teeth D² = (8 + 4 sqrt 3) p². Mass = density · 2 mm · 0.5 · pi/4 · D².
    @ParameterizedTest(name = "{0} teeth: {1} g")
    @CsvSource({"6, 3.977654", "12, 8.377387"})
    void aSprocketIsADiscOfItsPitchCircleLessWhatIsCutAway(int teeth, double grams) {
        assertEquals(grams, MIXED.cogG(new Cog(teeth)), 1e-6);
    }

    @Test
    void massAddsUpCogByCogAndGroupsMeetAtTheirFirstTooth() {
        double sum = MIXED.cogG(new Cog(11)) + MIXED.cogG(new Cog(29)) + MIXED.cogG(new Cog(30));
        assertEquals(sum, MIXED.cassetteG(Cassette.of(11, 29, 30)), 1e-12);
        // about (30/29)² more disc, of a material 2.70/4.43 as dense
        assertEquals(2.70 / 4.43 * 900 / 841, MIXED.cogG(new Cog(30)) / MIXED.cogG(new Cog(29)), 1e-3);
    }

    @Test
    void groupsMustAscend() {
        var group = new SprocketMass.Group(12, 2, 0.5, PlateMaterial.STEEL);
        List<SprocketMass.Group> twice = List.of(group, group);
        assertThrows(IllegalArgumentException.class, () -> new SprocketMass(twice));
        assertThrows(IllegalArgumentException.class, () -> new SprocketMass(List.of()));
    }
}
