package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.Ask;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What every edit is held against. */
class WatchedTest {
    private static final String GEARS = "\"rings\": [30], \"cogs\": [15]";

    private static List<String> watched(Scene scene) {
        return scene.assessment().watched().stream().map(Ask::toString).toList();
    }

    private static Scene scene(String lead) {
        return Scene.of(
                Scene.record("project", "\"name\": \"Test\"" + lead),
                Scene.record("C-001", GEARS),
                Scene.record("C-002", GEARS),
                Scene.record("C-003", GEARS + ", \"state\": \"parked\""),
                Scene.record("C-004", GEARS + ", \"retired\": \"gone\""),
                Scene.requirement("R-001", "\"answers\": []"),
                Scene.requirement("R-002", "\"state\": \"draft\""),
                Scene.requirement("R-003", "\"state\": \"parked\""),
                Scene.requirement("R-004", "\"retired\": \"gone\""),
                Scene.requirement("R-005", "\"answers\": []"),
                Scene.record("K-002", "\"wording\": \"Quick\", \"state\": \"withdrawn\""),
                Scene.record("K-001", "\"wording\": \"Silent\""));
    }

    @Test
    void verdictsOfAgreedRequirementsForEachConceptTheLeadFirstThenClaims() {
        assertEquals(
                List.of(
                        "verdict C-002 R-001",
                        "verdict C-002 R-005",
                        "verdict C-001 R-001",
                        "verdict C-001 R-005",
                        "claim-state K-001",
                        "claim-state K-002"),
                watched(scene(", \"leadConcept\": \"C-002\"")));
    }

    @Test
    void withoutALeadTheConceptsStandInOrder() {
        List<String> expected = List.of(
                "verdict C-001 R-001",
                "verdict C-001 R-005",
                "verdict C-002 R-001",
                "verdict C-002 R-005",
                "claim-state K-001",
                "claim-state K-002");
        assertEquals(expected, watched(scene("")));
        assertEquals(expected, watched(scene(", \"leadConcept\": \"C-099\""))); // names one that is not there
    }

    @Test
    void aParkedConceptInTheLeadIsWatchedToo() {
        assertEquals(
                "verdict C-003 R-001",
                watched(scene(", \"leadConcept\": \"C-003\"")).get(0));
    }
}
