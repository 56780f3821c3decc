package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LoopsTest {
    private static final Definition DEFINITION = Bench.sampleDefinition();
    private static final Bench BENCH = Bench.of(DEFINITION);

    private static String ids(List<? extends Entry> records) {
        return records.stream().map(record -> record.id().text()).collect(Collectors.joining(" "));
    }

    private static String looped(String selection, String word) {
        return BENCH.body("```each " + selection + "\n{{ " + word + " }}\n```\n")
                .replaceAll("\\s+", " ");
    }

    @Test
    void everyCurrentRecordComesOnceInTheOrderOfIds() {
        List<Need> needs = DEFINITION.all(RecordKinds.NEED).stream()
                .filter(Need::isCurrent)
                .toList();
        assertTrue(needs.size() > 40, "the sample has many needs");
        assertEquals(ids(needs), looped("need", "need"));
    }

    @Test
    void retiredRecordsAreLeftOut() {
        Definition retired =
                DEFINITION.with(Address.of(new RecordId("G-002"), "retired"), Optional.of("no longer followed"));
        assertEquals("G-001\n\nG-003", Bench.of(retired).body("```each rider\n{{ rider }}\n```\n"));
    }

    @Test
    void filtersKeepRecordsWhoseFieldIsTheWord() {
        List<Need> musts = DEFINITION.all(RecordKinds.NEED).stream()
                .filter(need -> need.isCurrent() && need.importance() == Need.Importance.MUST)
                .toList();
        assertEquals(ids(musts), looped("need importance=must", "need"));
        List<Requirement> analysed = DEFINITION.all(RecordKinds.REQUIREMENT).stream()
                .filter(r -> r.isCurrent()
                        && r.state() == Requirement.State.AGREED
                        && r.riders().contains(new RecordId("G-002")))
                .toList();
        assertFalse(analysed.isEmpty());
        assertEquals(ids(analysed), looped("requirement state=agreed riders=G-002", "requirement"));
    }

    @Test
    void ofKeepsRecordsThatReferToTheVariableOrThatItRefersTo() {
        RecordId riders = new RecordId("G-003");
        List<Requirement> about = DEFINITION.all(RecordKinds.REQUIREMENT).stream()
                .filter(r -> r.isCurrent() && r.riders().contains(riders))
                .toList();
        assertFalse(about.isEmpty());
        assertEquals(ids(about), looped("requirement of G-003", "requirement"));
        Requirement first = (Requirement) DEFINITION.get(new RecordId("R-001")).orElseThrow();
        assertEquals(
                first.answers().stream().sorted().map(RecordId::text).collect(Collectors.joining(" ")),
                looped("need of R-001", "need"),
                "those it refers to");
        assertEquals(
                looped("requirement of G-003", "requirement"),
                BENCH.body("````each rider\n```each requirement of rider\n{{ rider }}{{ requirement }}\n```\n````\n")
                        .lines()
                        .filter(line -> line.startsWith("G-003"))
                        .map(line -> line.substring(5))
                        .collect(Collectors.joining(" ")));
    }

    @Test
    void theVariableStandsInFiguresAndBehindBlocks() {
        String body = BENCH.body("````each concept\n# {{ concept.title }}\n\n{{ gear-range concept }}\n\n"
                + "```step-bars concept\n```\n````\n\n```each rider\n{{ lowest-development lead rider }}\n```\n");
        // 100 · 45 / 10 of C-002; by hand
        assertTrue(body.contains("450.0\u202F%"), body);
        assertTrue(body.contains("The steps between the cogs of C-003 go from"), body);
        assertTrue(body.contains("**Figure 1-1**") && body.contains("**Figure 2-1**"), body);
    }

    @Test
    void fieldsAreInTheReadersWords() {
        String body = BENCH.body("```each rider importance=7\n- {{ rider.riderMass_kg }}\n- {{ rider.climbs }}\n```\n\n"
                + "````each requirement of G-002 title=nothing\nx\n````\n\n"
                + "```each requirement weight=9\n- {{ requirement.state }} {{ requirement.criteria }}\n```\n");
        assertTrue(body.contains("80\u202Fkg"), body);
        assertTrue(body.contains("steep-12, forest-7"), body);
        assertTrue(body.contains("agreed"), body);
        String retired = BENCH.body("```each rider\n{{ rider.retired }}\n```\n");
        assertEquals("—\n\n—\n\n—", retired, "an empty field");
    }

    @Test
    void anEmptyLoopWritesNothing() {
        assertEquals("a\n\nb", BENCH.body("a\n\n```each rider title=nobody\n{{ rider }}\n```\n\nb\n"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            ```each ridr                    ~ "ridr" is no kind of record; did you mean rider?
            ```each                         ~ no kind of record is named; write a kind
            ```each rider of                ~ nothing stands behind "of"
            ```each need of rider           ~ "rider" stands for no record here; put this into a block "each rider"
            ```each need of G-009           ~ there is no rider group G-009; name one of G-001, G-002, G-003
            ```each need of P-999           ~ there is no part P-999;
            ```each need of Z-001           ~ no kind of record has ids like Z-001
            ```each need of somebody        ~ "somebody" behind "of" names no record
            ```each need importance         ~ "importance" is not field=word
            ```each need importanc=must     ~ a need has no field "importanc"; did you mean importance?
            ```each need importance=mst     ~ the field importance is never "mst"; did you mean must?
            ```each requirement criteria=k1 ~ the field criteria holds objects, no words
            """)
    void aLoopThatMakesNoSenseIsOneSentence(String fence, String sentence) {
        List<String> sentences = BENCH.sentences("x\n\n" + fence + "\ny\n```\n");
        assertEquals(1, sentences.size(), sentences.toString());
        assertTrue(sentences.get(0).startsWith("t.md:3:1: " + sentence), sentences.get(0));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            {{ rider.riderMas_kg }}      ~ 2:3: nothing is called "rider.riderMas_kg"; did you mean "rider.riderMass_kg"?
            {{ need.words }}             ~ 2:3: "need" stands for no record here; put this into a block "each need"
            {{ gear-range concept }}     ~ 2:3: "concept" stands for no record here
            {{ rider.title short }}      ~ 2:3: rider.title takes nothing behind it; leave "short" out
            {{ lead.title rider }}       ~ 2:3: lead.title takes nothing behind it
            {{ gear-range C-009 }}       ~ 2:3: there is no concept C-009; name one of C-000, C-001
            """)
    void aNameThatMakesNoSenseIsSaidOnceForAllRounds(String placeholder, String sentence) {
        List<String> sentences = BENCH.sentences("```each rider\n- " + placeholder + "\n```\n");
        assertEquals(1, sentences.size(), sentences.toString());
        assertTrue(sentences.get(0).startsWith("t.md:" + sentence), sentences.get(0));
    }

    @Test
    void theSameKindTwiceIsOneSentence() {
        assertEquals(
                List.of(
                        "t.md:2:1: \"each rider\" stands inside another one, and the word can stand for one record only;"
                                + " go through another kind here."),
                BENCH.sentences("````each rider\n```each rider\nx\n```\n````\n"));
    }

    @Test
    void threeLoopsAreDeepEnough() {
        String four = "``````each rider\n`````each concept\n````each bike\n```each part\nx\n```\n````\n`````\n``````\n";
        List<String> sentences = BENCH.sentences(four);
        assertEquals(1, sentences.size(), sentences.toString());
        assertTrue(sentences.get(0).startsWith("t.md:4:1: sections repeat at most 3 levels deep"), sentences.get(0));
    }

    @Test
    void loopsThatMultiplyStopAtTheLimit() {
        String three = "`````each part\n````each requirement\n```each need\n- x\n- y\n```\n````\n`````\n";
        List<String> sentences = BENCH.sentences(three); // some 10^5 rounds in all, each of them several blocks
        assertEquals(1, sentences.size(), sentences.toString());
        assertTrue(sentences.get(0).contains("would have more than 100000 blocks here"), sentences.get(0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "```riders\nx\n",
                "````each rider\nx\n```\n",
                "- a\n\n  ```each rider\n  x\n\nb\n",
                "~~~if lead.id\nx\n"
            })
    void aBlockThatIsNotClosedIsRefusedAtItsFence(String template) {
        List<String> sentences = BENCH.sentences(template);
        assertEquals(1, sentences.size(), sentences.toString());
        assertTrue(sentences.get(0).contains("\" is not closed; end it with a line of "), sentences.get(0));
    }

    @Test
    void theSameFenceInsideAndOutsideIsRefused() {
        List<String> sentences = BENCH.sentences("```each rider\n```gear-ladder rider\n```\n```\n");
        assertEquals(
                "t.md:2:1: the block \"gear-ladder\" is not closed; end it with a line of ```, and give a block that"
                        + " holds others a longer fence than theirs.",
                sentences.get(0));
    }

    @Test
    void codeThatIsNotClosedStaysCode() {
        assertEquals(List.of(), BENCH.sentences("```text\nx\n"));
    }

    @Test
    void blocksInBlocksEndAtADepth() {
        StringBuilder template = new StringBuilder();
        for (int i = 40; i > 2; i--) {
            template.append("`".repeat(i)).append("if lead.id\n");
        }
        template.append("x\n");
        for (int i = 3; i <= 40; i++) {
            template.append("`".repeat(i)).append("\n");
        }
        List<String> sentences = BENCH.sentences(template.toString());
        assertEquals(1, sentences.size(), sentences.toString());
        assertTrue(sentences.get(0).startsWith("t.md:13:1: blocks stand in blocks at most 12"), sentences.get(0));
    }
}
