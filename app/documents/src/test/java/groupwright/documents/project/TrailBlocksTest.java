package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Claim;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.documents.charts.TrailMap;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Unanswered;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Trails through the sample, whose links were read off its files by hand. */
class TrailBlocksTest {
    private final ProjectContent content = SampleProject.content(SampleProject.DEFINITION);

    private List<List<String>> rows(String block) {
        return SampleProject.rows(content.block(block, ""));
    }

    private List<String> row(String block, int column, String text) {
        return rows(block).stream()
                .filter(row -> row.get(column).equals(text))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRequirementLeadsFromItsNeedsToItsPlacesOnThePage() {
        assertEquals(
                List.of(
                        "N-001, N-002, N-004",
                        "R-007",
                        "Gear range at least 480\u202F%",
                        "450.0\u202F%",
                        "C-002",
                        "K-001, K-006",
                        "places of gear-range C-002"),
                row("trails", 1, "R-007"));
    }

    @Test
    void everyCriterionOfAnAgreedRequirementHasItsRow() {
        long criteria = SampleProject.DEFINITION.all(RecordKinds.REQUIREMENT).stream()
                .filter(requirement -> requirement.isCurrent() && requirement.state() == Requirement.State.AGREED)
                .mapToLong(requirement -> requirement.criteria().size())
                .sum();
        assertEquals(criteria, rows("trails").size());
        assertTrue(criteria > 30, "the sample has enough of them, has " + criteria);
    }

    @Test
    void manyRecordsBehindANumberAreDrawnTogether() {
        String records = row("trails", 1, "R-009").get(4);
        assertTrue(records.matches("project, C-002, \\d+ / P-001–P-0\\d\\d"), records);
    }

    @Test
    void aFieldLeadsBackToWhatHangsOnIt() {
        List<String> cogs = row("trails-back", 0, "C-002.cogs");
        assertTrue(cogs.get(1).contains("Gear range") && cogs.get(1).contains("Largest step"), cogs.get(1));
        assertTrue(ids(cogs.get(2)).containsAll(Set.of("R-005", "R-007")), cogs.get(2));
        assertTrue(ids(cogs.get(3)).contains("N-003"), cogs.get(3));
        assertTrue(cogs.get(4).contains("K-006"), cogs.get(4));
    }

    /** Ranges written out. */
    private static Set<String> ids(String runs) {
        return List.of(runs.split(", ")).stream()
                .flatMap(run -> {
                    String[] ends = run.split("–");
                    int first = RecordId.parse(ends[0]).orElseThrow().number();
                    int last =
                            RecordId.parse(ends[ends.length - 1]).orElseThrow().number();
                    return java.util.stream.IntStream.rangeClosed(first, last)
                            .mapToObj(number -> ends[0].charAt(0) + "-%03d".formatted(number));
                })
                .collect(Collectors.toSet());
    }

    @Test
    void aClaimLeadsBackToWhatRidersSaid() {
        List<String> claim = row("claim-trails", 0, "K-001");
        assertEquals("proposed", claim.get(1));
        assertEquals("Gear range 450.0\u202F%", claim.get(2));
        assertEquals("R-007", claim.get(3));
        assertEquals("N-001, N-002, N-004", claim.get(4));
    }

    @Test
    void withdrawnClaimsAreNoPartOfATrail() {
        List<String> withdrawn = SampleProject.DEFINITION.all(RecordKinds.CLAIM).stream()
                .filter(claim -> claim.state() == Claim.State.WITHDRAWN)
                .map(claim -> claim.id().text())
                .toList();
        assertFalse(withdrawn.isEmpty());
        assertTrue(rows("claim-trails").stream().noneMatch(row -> withdrawn.contains(row.get(0))));
    }

    @Test
    void thePictureOfARequirementHasAllSixLayersAndNoWordingOfAClaim() {
        BlockAnswer.Drawing drawing = assertInstanceOf(BlockAnswer.Drawing.class, content.block("trail", "R-007"));
        TrailMap map = (TrailMap) drawing.chart();
        assertEquals(
                List.of("said", "asked", "measured by", "answered", "kept at", "claimed"),
                map.layers().stream().map(TrailMap.Layer::name).toList());
        assertEquals("450.0\u202F%", map.layers().get(3).stations().get(0).name());
        assertEquals("C-002, misses", map.layers().get(3).stations().get(0).words());
        assertEquals("C-002.cogs", map.layers().get(4).stations().get(0).name());
        assertEquals(
                List.of("proposed", "holds"),
                map.layers().get(5).stations().stream()
                        .map(TrailMap.Station::words)
                        .toList());
        assertEquals("gear-range C-002", drawing.entries().get(0).id());
        String said = map.description() + map.table().rows();
        assertFalse(said.contains("hills all day"), "the wording of K-001, which is not approved");
    }

    @Test
    void aPictureOfNoRequirementIsRefusedInWords() {
        assertEquals(
                new Unanswered("there is no requirement R-999; name one of the project"),
                content.block("trail", "R-999"));
        BlockAnswer.Drawing usual = (BlockAnswer.Drawing) content.block("trail", "");
        assertEquals(
                "test-result C-002 R-018 quantity=breaking-load",
                usual.entries().get(0).id());
        assertEquals(new Unanswered("trails has no setting depth; leave it out"), content.block("trails", "depth=3"));
    }
}
