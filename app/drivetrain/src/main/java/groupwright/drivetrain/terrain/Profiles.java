package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Ways to a profile. */
public final class Profiles {
    /** Length of a hill made from bands in m (own choice; shifts in an hour grow as it shrinks). */
    public static final double USUAL_HILL_M = 2000;

    private static final double SHORTEST_HILL_M = 100;

    private Profiles() {}

    /**
     * A ride over hills in which the grades have their shares of the distance.
     *
     * <p>Order of pieces: the ride is cut into alike hills of about the length asked for. Each hill has one piece of
     * each band: first those that do not descend, the gentlest first, then the descending ones, the steepest first.
     * Grades: a band that does not descend has its middle; all descending bands lie equally far between their gentle
     * and their steep end, such that the ride ends as high as it began, or as nearly so as the bands let it. Real roads
     * are less regular; shares alone do not say in what order grades follow each other.
     *
     * @param lengthM length of the ride in m, above 0
     * @param hillM length of a hill in m, at least 100, usually {@link #USUAL_HILL_M}; a shorter ride is one hill
     * @param bands grades with their shares; those with share 0 are left out
     * @return the profile
     * @throws IllegalArgumentException if a number lies outside its range or no band has a share
     */
    public static Profile ofBands(double lengthM, double hillM, List<GradeBand> bands) {
        Bounds.within("the length of a profile", lengthM, 0, Profile.LONGEST_M, "m");
        Bounds.within("the length of a hill", hillM, SHORTEST_HILL_M, Profile.LONGEST_M, "m");
        List<GradeBand> used = bands.stream()
                .filter(band -> band.share() > 0)
                .sorted(Comparator.comparing(GradeBand::descends).thenComparingDouble(GradeBand::middle))
                .toList();
        double shares = used.stream().mapToDouble(GradeBand::share).sum();
        double steepness = steepness(used);
        int hills = Math.max(1, (int) StrictMath.rint(lengthM / hillM));
        List<Piece> pieces = new ArrayList<>();
        for (int hill = 0; hill < hills; hill++) {
            for (GradeBand band : used) {
                pieces.add(new Piece(lengthM / hills * (band.share() / shares), grade(band, steepness)));
            }
        }
        return new Profile(0, pieces);
    }

    private static double grade(GradeBand band, double steepness) {
        return band.descends() ? band.downTo(steepness) : band.middle();
    }

    /** Between gentle (0) and steep (1), where the descents undo the ascents; by halving, to the last digits. */
    private static double steepness(List<GradeBand> bands) {
        double gentle = 0;
        double steep = 1;
        double middle = 0.5;
        while (gentle < middle && middle < steep) {
            if (rise(bands, middle) > 0) {
                gentle = middle;
            } else {
                steep = middle;
            }
            middle = (gentle + steep) / 2;
        }
        return middle;
    }

    private static double rise(List<GradeBand> bands, double steepness) {
        return bands.stream()
                .mapToDouble(band -> new Piece(band.share(), grade(band, steepness)).riseM())
                .sum();
    }

    /**
     * Recorded ground as pieces of road, stretch after stretch.
     *
     * <p>Each stretch is cut into pieces of equal length, about as long as asked for; elevations at the cuts are means
     * over the window, which shrinks towards the ends so that the stretch keeps its rise. What lies between two
     * stretches is left out: a jump of the altimeter in a pause is no road. Distances count along the road, so a rise h
     * over a distance s has the grade h / sqrt(s² - h²). Cost: O(n log n).
     *
     * @param stretches recorded ground, see {@link Stretch#splitAtPauses}; those shorter than half a piece are left out
     * @param smoothing window and length of pieces
     * @return the profile
     * @throws IllegalArgumentException if no road is left, or naming where the ground is steeper than 100 %
     */
    public static Profile ofTrace(List<Stretch> stretches, Smoothing smoothing) {
        List<Piece> pieces = new ArrayList<>();
        for (Stretch stretch : stretches) {
            addPieces(new ElevationLine(stretch), smoothing, pieces);
        }
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException(
                    "the track is too short for a profile, it needs at least %s m".formatted(smoothing.pieceM() / 2));
        }
        return new Profile(stretches.get(0).points().get(0).elevationM(), pieces);
    }

    private static void addPieces(ElevationLine line, Smoothing smoothing, List<Piece> pieces) {
        double length = line.end() - line.start();
        int count = (int) StrictMath.rint(length / smoothing.pieceM());
        double before = line.at(line.start());
        for (int i = 1; i <= count; i++) {
            double s = i == count ? line.end() : line.start() + length * i / count;
            double after = line.meanAbout(s, smoothing.windowM());
            pieces.add(piece(length / count, after - before, s));
            before = after;
        }
    }

    private static Piece piece(double lengthM, double riseM, double atM) {
        double run = StrictMath.sqrt(Math.max(0, lengthM * lengthM - riseM * riseM));
        if (run < StrictMath.abs(riseM)) {
            throw new IllegalArgumentException(
                    "the ground at %.0f m is steeper than 100 %%, correct its elevation or smooth over more than now"
                            .formatted(atM));
        }
        return new Piece(lengthM, riseM / run);
    }
}
