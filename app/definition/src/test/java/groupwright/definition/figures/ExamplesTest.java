package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.ExampleProject;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.ledger.ValueText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each figure's documented example, computed; values worked out by hand stand beside the figures' other tests. */
class ExamplesTest {
    private static final String MORE = " …";
    private static final Asking EXAMPLE = new Asking(ExampleProject.definition());

    static Stream<Figure> figures() {
        return Asking.CATALOGUE.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void theExampleIsWhatTheFigureGives(Figure figure) {
        assertTrue(
                (figure.example().ask() + " ").startsWith(figure.id() + " "),
                figure.example().ask());
        Answer answer = EXAMPLE.answer(figure.example().ask());
        String shown = shownLike(figure.example().answer(), answer);
        assertEquals(
                figure.example().answer(), likeTheBeginning(figure.example().answer(), shown), figure.id());
    }

    /** A long list may be shown by its beginning. */
    private static String likeTheBeginning(String example, String shown) {
        if (!example.endsWith(MORE)) {
            return shown;
        }
        int end = example.length() - MORE.length();
        return shown.substring(0, Math.min(end, shown.length())) + MORE;
    }

    /** The answer with as many digits as the example gives. */
    private static String shownLike(String example, Answer answer) {
        if (answer instanceof Quantity quantity) {
            return rounded(quantity.value(), example);
        } else if (answer instanceof Series series) {
            String[] pairs = example.split(" ");
            return IntStream.range(0, series.values().size())
                    .mapToObj(i -> series.values().get(i).at() + "="
                            + rounded(series.values().get(i).value(), pairs[Math.min(i, pairs.length - 1)]))
                    .collect(Collectors.joining(" "));
        }
        return ValueText.of(answer);
    }

    private static String rounded(double value, String like) {
        int point = like.lastIndexOf('.');
        int digits = point < 0 ? 0 : like.length() - point - 1;
        return new BigDecimal(value).setScale(digits, RoundingMode.HALF_EVEN).toPlainString();
    }
}
