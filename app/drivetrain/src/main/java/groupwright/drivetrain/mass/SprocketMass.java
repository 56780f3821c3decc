package groupwright.drivetrain.mass;

import groupwright.drivetrain.chain.PitchCircle;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.ChainPitch;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;

/**
 * An estimate of what the sprockets of a cassette weigh, cog by cog, so that it adds up.
 *
 * <p>Neglected: carriers, rivets, spacers and the lock ring; that small cogs have little to cut away and large ones
 * much. Good for telling cassettes of one construction apart, not for a claim.
 *
 * @param groups which cogs are made how, by ascending tooth count; the first group also takes all smaller cogs
 */
public record SprocketMass(List<Group> groups) {
    /** Steel plate of 1.8 mm of which 40 % are left: an assumption to be replaced, no source. */
    public static final SprocketMass ASSUMED = new SprocketMass(List.of(new Group(0, 1.8, 0.40, PlateMaterial.STEEL)));

    private static final double MM3_PER_CM3 = 1000;
    private static final double MG_PER_G = 1000;

    /** Throws {@link IllegalArgumentException} without a group or with groups that do not ascend. */
    public SprocketMass {
        groups = List.copyOf(groups);
        if (groups.isEmpty()) {
            throw new IllegalArgumentException("the mass of sprockets needs at least one group of cogs");
        }
        for (int i = 1; i < groups.size(); i++) {
            if (groups.get(i).fromTeeth() <= groups.get(i - 1).fromTeeth()) {
                throw new IllegalArgumentException(
                        "groups of cogs must ascend, but one from %d teeth follows one from %d"
                                .formatted(
                                        groups.get(i).fromTeeth(),
                                        groups.get(i - 1).fromTeeth()));
            }
        }
    }

    /**
     * Mass of one sprocket.
     *
     * <p>Formula: density · thickness · share left · pi/4 · D², D the pitch diameter; the share counts the bore among
     * what is cut away, and the tooth tips outside the pitch circle are taken to fill the gaps inside it (assumption).
     *
     * @return grams
     */
    public double cogG(Cog cog) {
        Group group = groups.get(0);
        for (Group other : groups) {
            group = other.fromTeeth() <= cog.teeth() ? other : group;
        }
        double diameter = PitchCircle.diameterMm(ChainPitch.BICYCLE_MM, cog.teeth());
        double discMm3 = StrictMath.PI / 4 * diameter * diameter * group.thicknessMm();
        return group.material().densityGPerCm3() * discMm3 * group.leftShare() / MM3_PER_CM3;
    }

    /** Mass of one sprocket in whole milligrams. */
    public int cogMg(Cog cog) {
        return (int) StrictMath.round(MG_PER_G * cogG(cog));
    }

    /** Mass of all sprockets in g. Cost: O(n) in the number of cogs. */
    public double cassetteG(Cassette cassette) {
        return cassette.cogs().stream().mapToDouble(this::cogG).sum();
    }

    /**
     * Cogs made in one way.
     *
     * @param fromTeeth the smallest of them, 0 to 80 teeth
     * @param thicknessMm thickness of the plate in mm, above 0 and at most 20
     * @param leftShare share of the disc left by bore and cut-outs, above 0 and at most 1
     * @param material what it is cut from
     */
    public record Group(int fromTeeth, double thicknessMm, double leftShare, PlateMaterial material) {
        /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
        public Group {
            Bounds.count("the smallest cog of a group", fromTeeth, 0, 80);
            Bounds.positive("the thickness of a sprocket", thicknessMm, "mm");
            Bounds.within("the thickness of a sprocket", thicknessMm, 0, 20, "mm");
            Bounds.positive("the share of a sprocket left by cut-outs", leftShare, "");
            Bounds.within("the share of a sprocket left by cut-outs", leftShare, 0, 1, "");
        }
    }
}
