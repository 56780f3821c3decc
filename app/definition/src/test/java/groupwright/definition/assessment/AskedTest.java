package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.FigureText;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Claim;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who asks for an answer, on the sample, whose requirements and claims are listed in its own records. */
class AskedTest {
    private static final Path SAMPLE = Path.of("../../samples/tarnbeck");
    private final Ledger ledger = new Ledger(
            Catalogue.ofServices(), ProjectFiles.read(SAMPLE).definition().orElseThrow(), 200);

    private Ask ask(String text) {
        return FigureText.parse(text).resolve(ledger.catalogue(), Optional.empty());
    }

    private List<String> by(String text) {
        return Asked.by(ledger, ask(text)).stream()
                .map(by -> by.requirement().id() + " " + by.verdict().words())
                .toList();
    }

    @Test
    void aRequirementAsksOnlyForItsOwnParametersAndRiders() {
        assertEquals(List.of("R-005 misses"), by("largest-step C-002 from-teeth=14"));
        assertEquals(List.of(), by("largest-step C-002"));
        assertEquals(List.of("R-001 meets, too close to call"), by("climb-cadence C-002 G-002 climb=steep-12"));
        assertEquals(List.of(), by("climb-cadence C-002 G-001 climb=steep-12"));
    }

    @Test
    void theVerdictIsOnThisAnswerAndNotOnTheWorst() {
        assertEquals(List.of("R-005 misses"), by("largest-step C-001 from-teeth=14"));
        assertEquals(List.of("R-009 misses"), by("mass-predicted C-001"));
        assertEquals(List.of("R-009 meets, too close to call"), by("mass-predicted C-002"));
    }

    @Test
    void claimsRestOnFiguresAndThroughRequirements() {
        assertEquals(
                List.of("K-014"),
                Asked.restingOn(ledger, ask("largest-step C-002 from-teeth=14")).stream()
                        .map(Claim::id)
                        .map(Object::toString)
                        .toList());
    }
}
