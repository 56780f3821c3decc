package groupwright.drivetrain.quantity;

/** The distance between neighbouring pins of a chain. */
public final class ChainPitch {
    /** Pitch of a bicycle chain in mm: half an inch, 12.7 mm. Source: scope of ISO 9633:1992. */
    public static final double BICYCLE_MM = 12.7;

    private ChainPitch() {}
}
