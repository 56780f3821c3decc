package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.quantity.ChainPitch;

/**
 * The path of a chain round ring, tension pulley, guide pulley and cog for any angle of the cage. What does not depend
 * on the angle is computed once; asking for an angle makes no garbage. Seen from the drive side with the bike heading
 * for +x, ring, cog and tension pulley run clockwise, the guide pulley counterclockwise.
 */
final class Loop {
    private static final double PITCH = ChainPitch.BICYCLE_MM;
    private static final double TURN = 2 * StrictMath.PI;
    /**
     * A chain cannot lie on a wheel by more: beyond half a turn the two straight pieces meet at radius / tan((wrap - half
     * a turn) / 2) from the wheel, at 300° only 0.58 radii, 17 mm for a pulley of 14 teeth.
     */
    private static final double MOST_WRAP = StrictMath.toRadians(300);
    /** Wraps are read from here on, so that one just below 0 is negative and not nearly a turn. */
    private static final double LEAST_WRAP = StrictMath.toRadians(-30);

    private final Point pivot;
    private final Point ring;
    private final ChainRun run;
    private final Mechanism mechanism;
    private final double links;
    private final double ringMm;
    private final double cogMm;
    private final double guideMm;
    private final double tensionMm;
    private final double guideAlong; // guide pulley from the pivot, along and across the cage
    private final double guideAcross;
    private final double pulleysMm;
    private final double cageHeading; // of the straight piece from tension to guide pulley at angle 0
    private final double fixedPitches;
    private final Strand upper = new Strand();
    private final Strand lower = new Strand();
    private final Strand cage = new Strand();
    private final Strand free = new Strand();
    // the last angle asked for
    private double guideX;
    private double guideY;
    private double tensionX;
    private double tensionY;
    private double ringWrap;
    private double cogWrap;
    private double guideWrap;
    private double tensionWrap;

    Loop(Mechanism mechanism, ChainRun run, double links) {
        this.mechanism = mechanism;
        this.run = run;
        this.links = links;
        pivot = mechanism.pivotAt(run.sideTravelMm(), run.fullTravelMm());
        ring = run.ringCentreMm();
        ringMm = Mechanism.radiusMm(run.ringTeeth());
        cogMm = Mechanism.radiusMm(run.cogTeeth());
        guideMm = Mechanism.radiusMm(mechanism.guideTeeth());
        tensionMm = Mechanism.radiusMm(mechanism.tensionTeeth());
        double guideAngle = StrictMath.toRadians(mechanism.guideAngleDeg());
        guideAlong = mechanism.guideOffsetMm() * StrictMath.cos(guideAngle);
        guideAcross = mechanism.guideOffsetMm() * StrictMath.sin(guideAngle);
        pulleysMm = mechanism.pulleyDistanceMm();
        upper.between(0, 0, ring.xMm(), ring.yMm(), ringMm - cogMm);
        cage.between(pulleysMm, 0, 0, 0, -tensionMm - guideMm);
        cageHeading = cage.heading;
        fixedPitches = (upper.lengthMm + cage.lengthMm) / PITCH;
    }

    double links() {
        return links;
    }

    /** Fills a sample for an angle in radians. */
    void at(double angle, Sample sample) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        double guideOffX = guideAlong * cos - guideAcross * sin;
        double guideOffY = guideAlong * sin + guideAcross * cos;
        double tensionOffX = guideOffX + pulleysMm * cos;
        double tensionOffY = guideOffY + pulleysMm * sin;
        guideX = pivot.xMm() + guideOffX;
        guideY = pivot.yMm() + guideOffY;
        tensionX = pivot.xMm() + tensionOffX;
        tensionY = pivot.yMm() + tensionOffY;
        sample.angle = angle;
        sample.blockedBy = Sample.FREE;
        // a point at offset o from the pivot moves with speed (-o.y, o.x) for each radian
        keep(sample, Sample.GUIDE_COG, guideX, guideY, guideMm + cogMm, -guideOffY, guideOffX);
        keep(
                sample,
                Sample.GUIDE_RING,
                guideX - ring.xMm(),
                guideY - ring.yMm(),
                guideMm + ringMm,
                -guideOffY,
                guideOffX);
        keep(sample, Sample.TENSION_COG, tensionX, tensionY, tensionMm + cogMm, -tensionOffY, tensionOffX);
        keep(
                sample,
                Sample.TENSION_RING,
                tensionX - ring.xMm(),
                tensionY - ring.yMm(),
                tensionMm + ringMm,
                -tensionOffY,
                tensionOffX);
        if (sample.isFree()) {
            lower.between(ring.xMm(), ring.yMm(), tensionX, tensionY, tensionMm - ringMm);
            lower.moving(-tensionOffY, tensionOffX);
            free.between(guideX, guideY, 0, 0, guideMm + cogMm);
            free.moving(guideOffY, -guideOffX);
            lay(sample);
        }
    }

    /** Lays the chain on the wheels: wraps and length. */
    private void lay(Sample sample) {
        double cageNow = sample.angle + cageHeading;
        ringWrap = wrap(upper.heading - lower.heading);
        tensionWrap = wrap(lower.heading - cageNow);
        guideWrap = wrap(free.heading - cageNow);
        cogWrap = wrap(free.heading - upper.heading);
        double ringSlope = -lower.headingSlope;
        double tensionSlope = lower.headingSlope - 1;
        double guideSlope = free.headingSlope - 1;
        double cogSlope = free.headingSlope;
        keepWrap(sample, 4, ringWrap, ringSlope);
        keepWrap(sample, 5, tensionWrap, tensionSlope);
        keepWrap(sample, 6, guideWrap, guideSlope);
        keepWrap(sample, 7, cogWrap, cogSlope);
        double arcs = run.ringTeeth() * ringWrap
                + mechanism.tensionTeeth() * tensionWrap
                + mechanism.guideTeeth() * guideWrap
                + run.cogTeeth() * cogWrap;
        double arcSlopes = run.ringTeeth() * ringSlope
                + mechanism.tensionTeeth() * tensionSlope
                + mechanism.guideTeeth() * guideSlope
                + run.cogTeeth() * cogSlope;
        sample.value[Sample.LENGTH] = fixedPitches + (lower.lengthMm + free.lengthMm) / PITCH + arcs / TURN - links;
        sample.slope[Sample.LENGTH] = (lower.lengthSlope + free.lengthSlope) / PITCH + arcSlopes / TURN;
    }

    private static double wrap(double headings) {
        return headings - TURN * StrictMath.floor((headings - LEAST_WRAP) / TURN);
    }

    private static void keepWrap(Sample sample, int index, double wrap, double slope) {
        boolean low = wrap < MOST_WRAP / 2;
        keep(sample, index, low ? wrap : MOST_WRAP - wrap, low ? slope : -slope);
    }

    /** Two circles must stay apart. */
    private static void keep(Sample sample, int index, double x, double y, double least, double speedX, double speedY) {
        keep(sample, index, x * x + y * y - least * least, 2 * (x * speedX + y * speedY));
    }

    private static void keep(Sample sample, int index, double margin, double slope) {
        sample.value[index] = margin;
        sample.slope[index] = slope;
        if (!(margin > 0) && sample.isFree()) {
            sample.blockedBy = index;
        }
    }

    /** Cage and chain at the last angle asked for, at which nothing may be blocked. */
    CagePosition position(Sample sample, double angleDeg, ToothTips tips) {
        double gap = StrictMath.hypot(guideX, guideY);
        double tipsMm = gap - tips.radiusMm(run.cogTeeth()) - tips.radiusMm(mechanism.guideTeeth());
        double reach = tips.reachMm(run.cogTeeth()) + tips.reachMm(mechanism.guideTeeth());
        cage.between(tensionX, tensionY, guideX, guideY, -tensionMm - guideMm);
        return new CagePosition(
                angleDeg,
                new Point(guideX, guideY),
                new Point(tensionX, tensionY),
                new Gap(tipsMm, gap - cogMm - guideMm),
                new Wraps(degrees(ringWrap), degrees(cogWrap), degrees(guideWrap), degrees(tensionWrap)),
                new FreeChain((free.lengthMm - reach) / PITCH, free.lengthMm / PITCH),
                links + sample.value[Sample.LENGTH],
                new Spans(
                        upper.span(0, 0, -cogMm, -ringMm),
                        lower.span(ring.xMm(), ring.yMm(), -ringMm, -tensionMm),
                        cage.span(tensionX, tensionY, -tensionMm, guideMm),
                        free.span(guideX, guideY, guideMm, -cogMm)));
    }

    private static double degrees(double radians) {
        return StrictMath.toDegrees(radians);
    }
}
