package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.Seeds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** An invented derailleur whose closures three independent programs agree on, and random ones like it. */
final class ExampleMechanism {
    static final List<Integer> COGS = List.of(10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 44, 50);
    static final double SPACING_MM = 3.65;
    static final double FULL_MM = SPACING_MM * (COGS.size() - 1);
    static final Hanger HANGER = new Hanger(new Point(8, -28), -90);

    private ExampleMechanism() {}

    static Mechanism mechanism() {
        return with(20, -200);
    }

    static Mechanism with(double forwardDeg, double rearwardDeg) {
        return new Mechanism(
                HANGER,
                new Point(-20, -74),
                Math.toDegrees(Math.atan2(-1, 0.45)),
                Math.toDegrees(Math.atan(0.9)),
                38,
                -93,
                100,
                14,
                14,
                forwardDeg,
                rearwardDeg,
                new UpperPivot.Fixed());
    }

    static ChainRun run(int cog) {
        double travel = SPACING_MM * COGS.indexOf(cog);
        return new ChainRun(ChainRun.bottomBracket(435, 40), 32, cog, travel, FULL_MM);
    }

    /** Anything a designer might try, sensible or not. */
    static Mechanism random(Random random) {
        double forward = Seeds.between(random, -60, 40);
        return new Mechanism(
                HANGER,
                new Point(Seeds.between(random, -40, 20), Seeds.between(random, -110, -50)),
                Seeds.between(random, -120, -20),
                Seeds.between(random, 0, 50),
                Seeds.between(random, 0, 60),
                Seeds.between(random, -180, 180),
                Seeds.between(random, 62, 120),
                10 + random.nextInt(5),
                10 + random.nextInt(5),
                forward,
                forward - Seeds.between(random, 60, 220),
                random.nextBoolean()
                        ? new UpperPivot.Fixed()
                        : new UpperPivot.Turning(Seeds.between(random, -10, 10), Seeds.between(random, -40, 40)));
    }

    static ChainRun randomRun(Random random) {
        double full = Seeds.between(random, 25, 45);
        Point ring = ChainRun.bottomBracket(Seeds.between(random, 405, 460), Seeds.between(random, -10, 80));
        return new ChainRun(ring, 26 + random.nextInt(30), 9 + random.nextInt(44), full * random.nextDouble(), full);
    }

    /** Links near what the gear needs, so that closures are common. */
    static double randomLinks(ChainRun run, Random random) {
        double need = 2 * run.ringCentreMm().xMm() / 12.7 + (run.ringTeeth() + run.cogTeeth()) / 2.0;
        return Math.rint(need + Seeds.between(random, 2, 32));
    }

    /**
     * A length just within what the path reaches between the stops, so that it closes near an edge of the path or where
     * the length turns round; any length if there is no path.
     */
    static double hardLinks(Mechanism mechanism, ChainRun run, Random random) {
        double turn = mechanism.turnDeg(run.sideTravelMm(), run.fullTravelMm());
        List<Double> lengths = new ArrayList<>();
        for (double deg = mechanism.stopForwardDeg(); deg > mechanism.stopRearwardDeg(); deg -= 0.25) {
            ChainClosure.at(mechanism, run, deg + turn, ToothTips.USUAL)
                    .ifPresent(at -> lengths.add(at.lengthPitches()));
        }
        if (lengths.isEmpty()) {
            return randomLinks(run, random);
        }
        double within = 0.002 * random.nextDouble();
        return random.nextBoolean() ? Collections.max(lengths) - within : Collections.min(lengths) + within;
    }
}
