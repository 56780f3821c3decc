package groupwright.drivetrain;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;

/** Seeds for property tests, and what grows from them; the seed stands in the name of each test. */
public final class Seeds {
    private Seeds() {}

    public static LongStream hundred() {
        return LongStream.range(0, 100);
    }

    public static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    public static Cassette cassette(Random random) {
        int count = 1 + random.nextInt(13);
        return new Cassette(random.ints(9, 61)
                .distinct()
                .limit(count)
                .sorted()
                .mapToObj(Cog::new)
                .toList());
    }

    public static Crankset crankset(Random random) {
        int count = 1 + random.nextInt(3);
        return new Crankset(random.ints(20, 57)
                .distinct()
                .limit(count)
                .mapToObj(Chainring::new)
                .toList());
    }

    public static GearSet gearSet(Random random) {
        GearSet all = GearSet.of(crankset(random), cassette(random));
        List<Gear> gears = all.gears();
        Set<Gear> excluded = new HashSet<>();
        for (int i = random.nextInt(4); i > 0 && excluded.size() < gears.size() - 1; i--) {
            excluded.add(gears.get(random.nextInt(gears.size())));
        }
        return new GearSet(all.crankset(), all.cassette(), excluded);
    }

    public static Wheel wheel(Random random) {
        return Wheel.ofMarking(between(random, 400, 630), between(random, 18, 65));
    }
}
