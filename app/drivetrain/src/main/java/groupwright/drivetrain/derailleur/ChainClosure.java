package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.derailleur.Closure.Closes;
import groupwright.drivetrain.derailleur.Closure.NoPath;
import groupwright.drivetrain.derailleur.Closure.Obstacle;
import groupwright.drivetrain.derailleur.Closure.PulleyMeetsCog;
import groupwright.drivetrain.derailleur.Closure.Slack;
import groupwright.drivetrain.derailleur.Closure.TooTight;
import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.ChainPitch;
import java.util.Optional;

/**
 * The angle at which the cage of a rear derailleur holds a closed chain.
 *
 * <p>Geometry: pitch circles in the plane of the chain, ring, cog and tension pulley running one way and the guide pulley
 * the other; straight tangents between them; arcs counted in pitches, teeth · wrap / turn. An angle counts if ring, cog
 * and pulleys do not overlap and all four wraps lie above 0 and below 300°. Source: elementary geometry; checked against
 * three independent programs. Neglected: sag, that links are straight, the slant of the chain towards a ring not in line
 * with the cog (0.2 % of the span at 4°), wear, and a straight piece of chain that cuts through a wheel it does not run
 * on.
 */
public final class ChainClosure {
    private static final double MOST_LINKS = 1000;
    private static final double ENDLESS = 1e6; // links, longer than any path

    private ChainClosure() {}

    /** As {@link #solve(Mechanism, ChainRun, double, ToothTips)} with the usual tips of teeth. */
    public static Closure solve(Mechanism mechanism, ChainRun run, double links) {
        return solve(mechanism, run, links, ToothTips.USUAL);
    }

    /**
     * Where the cage stands in a gear.
     *
     * <p>The cage marches rearwards from its forward stop, which lengthens the path of the chain, and stays at the first
     * angle at which the path is as long as the chain, to 1e-9 degrees. The path lengthens as long as lower run and free
     * chain together pull the cage forward about its pivot; that ends where the cage points at the ring (pulled straight)
     * or away from it.
     *
     * <p>Cost: O(range of the stops): a path every 4° until the chain closes, then about 5 of Newton's steps; some 10
     * microseconds.
     *
     * @param mechanism the derailleur on the bike's hanger, see {@link Mechanism#mountedOn}
     * @param run the gear
     * @param links length of the chain in links (pitches), 1 to 1000
     * @param tips how far teeth stand out
     * @return what becomes of the chain
     * @throws IllegalArgumentException if the length lies outside its range
     */
    public static Closure solve(Mechanism mechanism, ChainRun run, double links, ToothTips tips) {
        Bounds.within("the length of the chain", links, 1, MOST_LINKS, "links");
        Loop loop = new Loop(mechanism, run, links);
        Findings found = march(loop, mechanism, run);
        if (found.closes()) {
            return new Closes(position(loop, found.root(), tips));
        }
        return found.hasPath() ? stopped(loop, found, tips) : pathless(found);
    }

    /**
     * The shortest and the longest path that the cage can give to a chain in a gear. Cost: as {@link #solve}, twice.
     *
     * @param mechanism the derailleur on the bike's hanger
     * @param run the gear
     * @param tips how far teeth stand out
     * @return both ends; empty if the chain can run at no angle
     */
    public static Optional<PathRange> range(Mechanism mechanism, ChainRun run, ToothTips tips) {
        Loop none = new Loop(mechanism, run, 0); // too tight from the first angle on
        Findings foremost = march(none, mechanism, run);
        if (!foremost.hasPath()) {
            return Optional.empty();
        }
        Loop endless = new Loop(mechanism, run, ENDLESS); // slack to the last angle
        Findings rearmost = march(endless, mechanism, run);
        return Optional.of(new PathRange(
                position(none, foremost.edge().angle(), tips),
                position(endless, rearmost.edge().angle(), tips)));
    }

    private static Findings march(Loop loop, Mechanism mechanism, ChainRun run) {
        double turn = mechanism.turnDeg(run.sideTravelMm(), run.fullTravelMm());
        return new March(loop)
                .between(
                        StrictMath.toRadians(mechanism.stopForwardDeg() + turn),
                        StrictMath.toRadians(mechanism.stopRearwardDeg() + turn));
    }

    /** The cage has come to an end of the angles it can take. */
    private static Closure stopped(Loop loop, Findings found, ToothTips tips) {
        CagePosition at = position(loop, found.edge().angle(), tips);
        double missingMm = (at.lengthPitches() - loop.links()) * ChainPitch.BICYCLE_MM;
        if (found.edge().margin() == Sample.GUIDE_COG) {
            return new PulleyMeetsCog(at.cageAngleDeg(), Optional.of(at));
        }
        return found.isTight() ? new TooTight(at, missingMm) : new Slack(at, -missingMm);
    }

    private static Closure pathless(Findings found) {
        if (found.meetsCog()) {
            return new PulleyMeetsCog(StrictMath.toDegrees(found.meetsCogAt()), Optional.empty());
        }
        return new NoPath(found.atStart() < Sample.OVERLAPS ? Obstacle.WHEELS_OVERLAP : Obstacle.CHAIN_OFF_A_WHEEL);
    }

    /**
     * Cage and chain at a given angle, whatever the length of the chain; for drawing and for the path's length as a
     * function of the angle. Stops are not asked. Cost: O(1).
     *
     * @param mechanism the derailleur on the bike's hanger
     * @param run the gear
     * @param cageAngleDeg angle of the cage in degrees, -1000 to 1000
     * @param tips how far teeth stand out
     * @return the position; empty if wheels overlap there or the chain comes off one
     * @throws IllegalArgumentException if the angle lies outside its range
     */
    public static Optional<CagePosition> at(Mechanism mechanism, ChainRun run, double cageAngleDeg, ToothTips tips) {
        Bounds.within("the angle of the cage", cageAngleDeg, -1000, 1000, "°");
        Loop loop = new Loop(mechanism, run, 0);
        Sample sample = new Sample();
        loop.at(StrictMath.toRadians(cageAngleDeg), sample);
        return sample.isFree() ? Optional.of(loop.position(sample, cageAngleDeg, tips)) : Optional.empty();
    }

    private static CagePosition position(Loop loop, double angle, ToothTips tips) {
        Sample sample = new Sample();
        loop.at(angle, sample);
        return loop.position(sample, StrictMath.toDegrees(angle), tips);
    }
}
