package groupwright.drivetrain.mass;

/**
 * What a sprocket is cut from, with its density at room temperature.
 *
 * <p>Source: Callister, Materials Science and Engineering, Table B.1: low-alloy steel 4140, aluminium alloy 6061; the
 * line of titanium alloy Ti-6Al-4V is cited from memory.
 */
public enum PlateMaterial {
    /** Low-alloy steel, 7.85 g/cm³. */
    STEEL(7.85),
    /** Aluminium alloy, 2.70 g/cm³. */
    ALUMINIUM(2.70),
    /** Titanium alloy, 4.43 g/cm³. */
    TITANIUM(4.43);

    private final double density;

    PlateMaterial(double density) {
        this.density = density;
    }

    /** Density in g/cm³. */
    public double densityGPerCm3() {
        return density;
    }
}
