package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Parameter;
import groupwright.documents.numbers.Reader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The guide to templates is what the program says of itself. After a change of blocks, figures or records write it anew:
 * {@code mvn -pl app/documents -am test -Dtest=TemplateGuideTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dgroupwright.regenerate=true}.
 */
class TemplateGuideTest {
    private static final Path PAGE = Path.of("..", "..", "templates", "README.md");
    private static final Bench BENCH = Bench.sample();

    private static String guide() {
        return TemplateGuide.markdown(
                BENCH.ledger().catalogue(), new ProjectContent(BENCH.ledger(), new Reader(Locale.ENGLISH)).words());
    }

    @Test
    void thePageIsWhatTheProgramSays() throws IOException {
        String expected = guide();
        if (Boolean.getBoolean("groupwright.regenerate")) {
            Files.writeString(PAGE, expected);
        }
        assertEquals(expected, Files.readString(PAGE), "write templates/README.md anew as this test's comment says");
    }

    static Stream<String> examples() {
        List<String> found = new ArrayList<>();
        Parser.builder().build().parse(guide()).accept(new AbstractVisitor() {
            @Override
            public void visit(FencedCodeBlock code) {
                if ("markdown".equals(code.getInfo())) {
                    found.add(code.getLiteral());
                }
            }
        });
        assertTrue(found.size() > Blocks.ALL.size(), "an example for each block and some more");
        return found.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleExpandsAndShowsSomething(String example) {
        assertEquals(List.of(), BENCH.sentences(example));
        assertFalse(BENCH.body(example).isBlank(), example);
    }

    @Test
    void nothingIsLeftToFillIn() {
        assertFalse(guide().contains("${"), "a part of the guide has no text");
    }

    @Test
    void wordsForKindsAndReservedNamesAreNoFiguresOrParameters() {
        for (Figure figure : BENCH.ledger().catalogue().all()) {
            assertFalse(Kinds.contains(figure.id()), figure.id());
            for (Parameter parameter : figure.parameters()) {
                assertFalse(FigurePlaceholder.RESERVED.contains(parameter.name()), figure.id() + " " + parameter);
            }
        }
    }
}
