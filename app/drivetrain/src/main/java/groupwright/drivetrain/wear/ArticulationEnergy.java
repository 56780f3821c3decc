package groupwright.drivetrain.wear;

import groupwright.drivetrain.quantity.Bounds;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.function.ToIntFunction;

/**
 * Friction work in the joints of the chain for each km ridden: on each pin, and where the chain bends, on each tooth.
 *
 * <p>Formula: for the work W pedalled in a gear, mu · r / p · W · (2 pi / z_ring + 2 pi / z_cog). In a time t the chain
 * moves v · t, so v · t / p links run off the cog and on the ring, and rub mu · F · r · 2 pi / z at each. With F · v = P and
 * P · t = W speed and time drop out: per km it is pedal work times angle of bending. The sum over all gears is shared by all
 * pins; what bends on the cogs (rings) is shared by the teeth of those cogs (rings) that were used.
 *
 * <p>Neglects slack run and pulleys, crossed running, shifting and the unequal use of cogs within a group. Energy stands for
 * wear only in comparison, see {@link RelativeWear}; with {@link ChainFriction#ASSUMED} it may be off by
 * {@link ChainFriction#UNCERTAINTY_PCT}. Design estimate, not proof of conformity.
 *
 * @param chainJ J on each pin and km
 * @param smallCogsJ J on each tooth and km; empty if no such cog was used
 * @param bigCogsJ J on each tooth and km; empty if no such cog was used
 * @param ringsJ J on each tooth and km; empty if nothing was pedalled
 */
public record ArticulationEnergy(
        double chainJ, OptionalDouble smallCogsJ, OptionalDouble bigCogsJ, OptionalDouble ringsJ) {
    private static final int FEWEST_LINKS = 20;
    private static final int MOST_LINKS = 1000;

    /** Throws {@link IllegalArgumentException} if a number is negative or not finite. */
    public ArticulationEnergy {
        Bounds.notNegative("the energy on a pin", chainJ, "J");
        smallCogsJ.ifPresent(energy -> Bounds.notNegative("the energy on a tooth of small cogs", energy, "J"));
        bigCogsJ.ifPresent(energy -> Bounds.notNegative("the energy on a tooth of big cogs", energy, "J"));
        ringsJ.ifPresent(energy -> Bounds.notNegative("the energy on a tooth of the rings", energy, "J"));
    }

    /**
     * The energies of a way ridden.
     *
     * @param ridden work in each gear
     * @param links links of the chain, 20 to 1000
     * @param bigCogsFrom least teeth of a cog that counts as big
     * @param friction the chain
     * @throws IllegalArgumentException if the number of links lies outside its range
     */
    public static ArticulationEnergy of(RiddenGears ridden, int links, int bigCogsFrom, ChainFriction friction) {
        Bounds.count("the number of links of a chain", links, FEWEST_LINKS, MOST_LINKS);
        double all = ridden.use().stream()
                .mapToDouble(use -> use.workJ() * friction.shareOfWork(Articulation.underLoadRad(use.gear())))
                .sum();
        return new ArticulationEnergy(
                all / links / ridden.km(),
                onTeeth(ridden, friction, ArticulationEnergy::cogTeeth, teeth -> teeth < bigCogsFrom),
                onTeeth(ridden, friction, ArticulationEnergy::cogTeeth, teeth -> teeth >= bigCogsFrom),
                onTeeth(ridden, friction, use -> use.gear().ring().teeth(), teeth -> true));
    }

    private static int cogTeeth(GearWork use) {
        return use.gear().cog().teeth();
    }

    private static OptionalDouble onTeeth(
            RiddenGears ridden, ChainFriction friction, ToIntFunction<GearWork> teethOf, IntPredicate belongs) {
        double energy = 0;
        var wheels = new TreeSet<Integer>();
        for (GearWork use : ridden.use()) {
            int teeth = teethOf.applyAsInt(use);
            if (use.isUsed() && belongs.test(teeth)) {
                energy += use.workJ() * friction.shareOfWork(Articulation.angleRad(teeth));
                wheels.add(teeth);
            }
        }
        int teeth = wheels.stream().mapToInt(Integer::intValue).sum();
        return teeth == 0 ? OptionalDouble.empty() : OptionalDouble.of(energy / teeth / ridden.km());
    }

    /** The energy on one pin or tooth of a part in J for each km; empty if the part was not used. */
    public OptionalDouble of(WornPart part) {
        return switch (part) {
            case CHAIN -> OptionalDouble.of(chainJ);
            case SMALL_COGS -> smallCogsJ;
            case BIG_COGS -> bigCogsJ;
            case RINGS -> ringsJ;
        };
    }
}
