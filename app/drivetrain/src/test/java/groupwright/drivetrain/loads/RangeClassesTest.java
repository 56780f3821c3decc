package groupwright.drivetrain.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RangeClassesTest {
    @Test
    void twoSinesFallIntoThePublishedClasses() {
        // README of the resources, computed by a separate program
        RangeClasses classes = new RangeClasses(0.2);
        Rainflow.count(classes, Histories.file("rainflow_two_sines.csv"));
        assertEquals(
                List.of(4.0, 1.0, 2.0, 2.5),
                classes.classes().stream().map(RangeClass::cycles).toList());
        assertEquals(0.6, classes.classes().get(1).fromRange(), 1e-12);
        assertEquals(1.994, classes.spectrum().largestLoad(), 5e-4);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void eachRangeLiesBetweenTheEdgesOfItsClass(long seed) {
        var random = new Random(seed);
        double width = Seeds.between(random, 0.01, 3);
        for (int i = 1; i < 500; i++) {
            double edge = i * width;
            for (double range : new double[] {Math.nextDown(edge), edge, Math.nextUp(edge), edge - width * 0.3}) {
                RangeClasses classes = new RangeClasses(width);
                classes.accept(range, 0, 0.5);
                RangeClass only = classes.classes().get(0);
                assertTrue(only.fromRange() <= range && range < only.toRange(), range + " in " + only);
                assertEquals(new RangeClass(only.fromRange(), only.toRange(), 0.5, range), only);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theSpectrumOfTheClassesIsNeverMilder(long seed) {
        double[] history = Histories.random(new Random(seed));
        RangeClasses classes = new RangeClasses(0.7);
        Rainflow.count(classes, history);
        LoadSpectrum exact = Rainflow.spectrum(history);
        LoadSpectrum coarse = classes.spectrum();
        assertEquals(exact.cycles(), coarse.cycles());
        assertEquals(exact.largestLoad(), coarse.largestLoad());
        double wider = exact.blocks().stream()
                .mapToDouble(block -> block.cycles() * Math.pow(block.load() + 0.7, 4))
                .sum();
        assertTrue(coarse.powerSum(4) >= exact.powerSum(4) * (1 - 1e-12));
        assertTrue(coarse.powerSum(4) <= wider);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new RangeClasses(0));
        assertThrows(IllegalArgumentException.class, () -> new RangeClasses(Double.NaN));
        var tooWide = assertThrows(IllegalArgumentException.class, () -> new RangeClasses(1e-9).accept(1, 0, 1));
        assertTrue(tooWide.getMessage().endsWith("take wider classes"), tooWide.getMessage());
    }
}
