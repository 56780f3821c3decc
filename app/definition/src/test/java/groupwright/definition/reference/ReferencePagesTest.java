package groupwright.definition.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The reference pages beside this module are what the descriptions say. After a change of a record or figure write them anew:
 * {@code mvn -pl app/definition -am test -Dtest=ReferencePagesTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dgroupwright.regenerate=true}.
 */
class ReferencePagesTest {
    private static final boolean REGENERATE = Boolean.getBoolean("groupwright.regenerate");

    @Test
    void recordPageIsWhatTheRecordsSay() throws IOException {
        compare("records.md", RecordPage.markdown());
    }

    @Test
    void figurePageIsWhatTheFiguresSay() throws IOException {
        compare("figures.md", FigurePage.markdown(Catalogue.ofServices()));
    }

    private static void compare(String name, String expected) throws IOException {
        Path page = Path.of(name);
        if (REGENERATE) {
            Files.writeString(page, expected);
        }
        assertEquals(expected, Files.readString(page), "write " + name + " anew as this test's comment says");
    }
}
