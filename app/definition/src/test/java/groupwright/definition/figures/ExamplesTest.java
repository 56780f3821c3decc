package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.ExampleProject;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.ValueText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each figure's documented example, computed; values worked out by hand stand beside the figures' other tests. */
class ExamplesTest {
    private static final Asking EXAMPLE = new Asking(ExampleProject.definition());

    static Stream<Figure> figures() {
        return Asking.CATALOGUE.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void theExampleIsWhatTheFigureGives(Figure figure) {
        assertTrue(
                figure.example().ask().startsWith(figure.id() + " "),
                figure.example().ask());
        Answer answer = EXAMPLE.answer(figure.example().ask());
        assertEquals(figure.example().answer(), shown(answer, figure), figure.id());
    }

    private static String shown(Answer answer, Figure figure) {
        return answer instanceof Quantity quantity
                ? new BigDecimal(quantity.value())
                        .setScale(figure.decimals(), RoundingMode.HALF_EVEN)
                        .toPlainString()
                : ValueText.of(answer);
    }
}
