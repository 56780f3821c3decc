package groupwright.definition.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.Workings;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Knowledge bands against chance: inputs drawn from normal distributions with their ± as standard deviation, answers
 * computed for each draw, and their standard deviation held against the root-sum-square band (Guide to the expression of
 * uncertainty in measurement, JCGM 100:2008, 5.1.2, against Monte Carlo as in JCGM 101:2008; both from memory).
 */
class BandsByChanceTest {
    private static final int DRAWS = 4000;
    private static final Definition SAMPLE = ProjectFiles.read(Path.of("..", "..", "samples", "tarnbeck"))
            .definition()
            .orElseThrow();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "climb-cadence C-002 G-002 climb=steep-12",
                "climb-cadence C-002 G-003 climb=pass-8",
                "climb-speed C-001 G-001 climb=steep-15",
                "held-speed C-002 G-001",
                "steepest-climb C-002 G-002"
            })
    void theSpreadOfDrawnAnswersIsTheBand(String text) {
        Catalogue catalogue = Catalogue.ofServices();
        Ask ask = FigureText.parse(text).resolve(catalogue, Optional.empty());
        Ledger ledger = new Ledger(catalogue, SAMPLE, 1000);
        Band.Between band = (Band.Between) ledger.band(ask);
        Map<Address, Amount> banded = banded(ledger, ask);
        assertTrue(banded.size() > 1, text + " rests on " + banded);
        Random random = new Random(20260309);
        double sum = 0;
        double squares = 0;
        double middle = ((Quantity) ledger.ask(ask)).value();
        for (int i = 0; i < DRAWS; i++) {
            Definition drawn = SAMPLE;
            for (Map.Entry<Address, Amount> input : banded.entrySet()) {
                Amount amount = input.getValue();
                double value = amount.value() + random.nextGaussian() * amount.plusMinus();
                drawn = drawn.with(input.getKey(), Optional.of(amount.withValue(Math.max(value, 0))));
            }
            double away = ((Quantity) ledger.fork(drawn).ask(ask)).value() - middle;
            sum += away;
            squares += away * away;
        }
        double mean = sum / DRAWS;
        double spread = Math.sqrt(squares / DRAWS - mean * mean);
        double half = (band.high() - band.low()) / 2;
        // the spread of 4,000 draws is itself known to 1 / sqrt(2 · 4000) = 1.1 %; three of these, and curvature
        assertEquals(1, spread / half, 0.04, text + ": spread " + spread + ", band ± " + half);
    }

    private static Map<Address, Amount> banded(Ledger ledger, Ask ask) {
        Map<Address, Amount> banded = new LinkedHashMap<>();
        for (Workings.FieldInput input : ledger.trace(ask)) {
            Object value = input.value() instanceof Optional<?> optional
                    ? optional.map(Object.class::cast).orElse("")
                    : input.value();
            if (value instanceof Amount amount && amount.isBanded()) {
                banded.put(input.address(), amount);
            }
        }
        return banded;
    }
}
