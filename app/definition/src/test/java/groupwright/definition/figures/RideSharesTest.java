package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.ExampleProject;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every ride, on riders and gears drawn by chance. */
class RideSharesTest {
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void sharesAddUpAndStayWithinTheirEnds(long seed) {
        Asking asking = new Asking(drawn(new Random(seed)));
        String about = " C-901 G-901 ride-length=8";
        for (String by : new String[] {"time", "distance", "work", "turns"}) {
            assertEquals(100, sum(asking, "gear-use" + about + " by=" + by), 1e-9, "seed " + seed + ", by " + by);
        }
        assertEquals(100, sum(asking, "cadence-distribution" + about), 1e-9, "seed " + seed);
        double comfort = asking.value("cadence-comfort" + about);
        double slow = asking.value("walking-time" + about) + asking.value("grinding-time" + about);
        assertTrue(comfort >= 0 && comfort <= 100, "seed " + seed + ": comfort " + comfort);
        assertTrue(slow >= 0 && slow <= 100 + 1e-9, "seed " + seed + ": on foot and grinding " + slow);
        assertTrue(
                asking.value("cogs-shifted" + about) + asking.value("front-shifts" + about)
                        >= asking.value("shift-actions" + about) - 1e-9,
                "seed " + seed + ": each action moves a cog or a ring");
    }

    private static Definition drawn(Random random) {
        TreeSet<Integer> cogs = new TreeSet<>();
        int count = 1 + random.nextInt(12);
        while (cogs.size() < count) {
            cogs.add(10 + random.nextInt(41));
        }
        Definition definition = ExampleProject.definition();
        definition = set(definition, "C-901.excludedGears", java.util.List.of());
        definition = set(definition, "C-901.cogs", java.util.List.copyOf(cogs));
        definition = set(definition, "G-901.powerHour_W", Amount.of(60 + random.nextInt(300)));
        definition = set(definition, "G-901.riderMass_kg", Amount.of(40 + random.nextInt(80)));
        return set(definition, "G-901.terrain.up.to_pct", Amount.of(3 + random.nextInt(25)));
    }

    private static Definition set(Definition definition, String address, Object value) {
        return definition.with(Address.parse(address).orElseThrow(), Optional.of(value));
    }

    private static double sum(Asking asking, String text) {
        return ((Series) asking.answer(text))
                .values().stream().mapToDouble(Series.At::value).sum();
    }
}
