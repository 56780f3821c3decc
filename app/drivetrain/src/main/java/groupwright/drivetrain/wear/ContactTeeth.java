package groupwright.drivetrain.wear;

import groupwright.drivetrain.quantity.Bounds;

/** How many teeth share the load of a chain. */
public final class ContactTeeth {
    private static final int FEWEST_TEETH = 3;
    private static final int MOST_TEETH = 1000;

    private ContactTeeth() {}

    /**
     * Teeth in contact with the chain.
     *
     * <p>Formula: z · wrap / 360°: the chain has one roller for each tooth along its arc (geometry). Not rounded: over a
     * turn the count swings between the whole numbers beside it. How unevenly the teeth share the load is neglected.
     * Design estimate, not proof of conformity.
     *
     * @param teeth number of teeth of the sprocket, 3 to 1000
     * @param wrapDeg arc along which the chain lies on the sprocket in degrees, 0 to 360
     * @return teeth
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double of(int teeth, double wrapDeg) {
        Bounds.count("the number of teeth of a sprocket", teeth, FEWEST_TEETH, MOST_TEETH);
        return teeth * Bounds.within("the wrap of a chain", wrapDeg, 0, 360, "°") / 360;
    }
}
