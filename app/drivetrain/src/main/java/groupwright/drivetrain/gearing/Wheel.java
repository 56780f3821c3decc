package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Bounds;

/**
 * The driven wheel, known by how far it rolls in one turn.
 *
 * @param circumferenceM rolling circumference in metres, 0.3 to 5
 */
public record Wheel(double circumferenceM) {
    private static final double MM_PER_M = 1000;
    private static final double NARROW_BELOW_MM = 28;
    private static final double NARROW_ADDS_MM = 2.5;

    /** Checks the circumference and throws {@link IllegalArgumentException} if it lies outside 0.3 to 5 m. */
    public Wheel {
        Bounds.within("the rolling circumference of a wheel", circumferenceM, 0.3, 5, "m");
    }

    /**
     * A wheel by the marking on its tyre, not shortened by load.
     *
     * @see #ofMarking(double, double, double)
     */
    public static Wheel ofMarking(double beadSeatDiameterMm, double tyreWidthMm) {
        return ofMarking(beadSeatDiameterMm, tyreWidthMm, 1);
    }

    /**
     * A wheel by the marking on its tyre, for example 57-622.
     *
     * <p>Formula: circumference = loaded factor · pi · {@link #overallDiameterMm overall diameter}.
     *
     * <p>Neglects tyre pressure and rim width; a loaded tyre rolls shorter, which only the loaded factor says.
     *
     * @param beadSeatDiameterMm bead seat diameter in mm, 150 to 800
     * @param tyreWidthMm nominal tyre width in mm, 10 to 150
     * @param loadedFactor share of the unloaded circumference that is left under the rider, 0.8 to 1.1
     * @return the wheel
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static Wheel ofMarking(double beadSeatDiameterMm, double tyreWidthMm, double loadedFactor) {
        Bounds.within("the loaded factor of a wheel", loadedFactor, 0.8, 1.1, "");
        return new Wheel(loadedFactor * Math.PI * overallDiameterMm(beadSeatDiameterMm, tyreWidthMm) / MM_PER_M);
    }

    /**
     * A wheel by its measured roll-out: the distance it covers in one turn, under the rider.
     *
     * @param rollOutMm measured distance in mm, 300 to 5000
     * @return the wheel
     * @throws IllegalArgumentException if the distance lies outside its range
     */
    public static Wheel ofRollOut(double rollOutMm) {
        Bounds.within("the measured roll-out of a wheel", rollOutMm, 300, 5000, "mm");
        return new Wheel(rollOutMm / MM_PER_M);
    }

    /**
     * Diameter over the tyre, unloaded.
     *
     * <p>Formula: bead seat diameter + 2 · section height; the height is the tyre width, and the width + 2.5 mm below
     * 28 mm, so that a 27 mm tyre comes out taller than a 28 mm one.
     *
     * <p>Source: ISO 5775-1, by an encyclopaedia's summary of it. Neglects tread and rim width.
     *
     * @param beadSeatDiameterMm bead seat diameter in mm, 150 to 800
     * @param tyreWidthMm nominal tyre width in mm, 10 to 150
     * @return the diameter in mm
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double overallDiameterMm(double beadSeatDiameterMm, double tyreWidthMm) {
        Bounds.within("the bead seat diameter of a wheel", beadSeatDiameterMm, 150, 800, "mm");
        Bounds.within("the width of a tyre", tyreWidthMm, 10, 150, "mm");
        double height = tyreWidthMm < NARROW_BELOW_MM ? tyreWidthMm + NARROW_ADDS_MM : tyreWidthMm;
        return beadSeatDiameterMm + 2 * height;
    }

    /** Diameter in mm of the circle with this wheel's rolling circumference. */
    public double rollingDiameterMm() {
        return circumferenceM * MM_PER_M / Math.PI;
    }
}
