package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConditionTest {
    private static final Bench BENCH = Bench.sample();

    private static boolean holds(Bench bench, String condition) {
        String body = bench.body("a\n\n````each rider importance=7\n```if " + condition + "\nyes\n```\n````\n");
        return body.contains("yes");
    }

    /** C-002 has the cogs 10 to 45 on one ring: 450 % exactly. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            rider.description                     ~ true
            rider.retired                         ~ false
            not rider.retired                     ~ true
            rider.climbs                          ~ true
            rider.rollOut_mm                      ~ false
            rider.riderMass_kg                    ~ true
            lead.title                            ~ true
            rider.importance is 7                 ~ true
            rider.importance is 8                 ~ false
            not rider.importance is 8             ~ true
            lead.id is C-002                      ~ true
            project.currency is eur               ~ true
            gear-range lead at least 450          ~ true
            gear-range lead at most 450           ~ true
            gear-range lead at least 450.1        ~ false
            gear-range lead at least 450,1        ~ false
            gear-range lead at least 440 %        ~ true
            gear-range lead at most 440           ~ false
            not gear-range lead at least 480      ~ true
            largest-step lead from-teeth=14 at most 20 ~ true
            lowest-development lead rider at least 1.6 m ~ true
            any claim state=proposed              ~ true
            any requirement of rider state=agreed ~ true
            any milestone title=never             ~ false
            not any milestone title=never         ~ true
            """)
    void conditionsAreAnsweredFromTheProject(String condition, boolean expected) {
        assertEquals(expected, holds(BENCH, condition));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            ```if                                  ~ no condition is given; write for example
            ```if not                              ~ no condition is given; write for example
            ```if gear-range lead                  ~ "gear-range lead" is no condition; write for example
            ```if gear-range lead at least         ~ no number stands behind "at least"; write for example gear-range lead at least 480
            ```if gear-range lead at least many    ~ no number stands behind "at least"
            ```if gear-range lead at least 480 mm  ~ gear-range lead is not in "mm"; write the number in %
            ```if gear-rage lead at least 480      ~ there is no figure "gear-rage"; did you mean gear-range?
            ```if gear-range C-009 at least 480    ~ there is no concept C-009; name one of
            ```if steps lead at least 3            ~ steps lead gives no single number
            ```if lead.titel                       ~ "lead.titel" is neither a field nor a word of the project; did you mean lead.title?
            ```if rider.title                      ~ "rider" stands for no record here; put this into a block "each rider"
            ```if rider.titel is x                 ~ a rider has no field "titel"; did you mean title?
            ```if lead.title is                    ~ nothing stands behind "is"
            ```if any clam                         ~ "clam" is no kind of record; did you mean claim?
            ```if any                              ~ no kind of record is named
            """)
    void aConditionThatIsNoneIsOneSentenceWithItsPlace(String fence, String sentence) {
        List<String> sentences = BENCH.sentences("x\n\n- y\n\n  " + fence + "\n  z\n  ```\n");
        assertEquals(1, sentences.size(), sentences.toString());
        assertTrue(sentences.get(0).startsWith("t.md:5:3: " + sentence), sentences.get(0));
    }

    @Test
    void aMissingInputHoldsNeitherComparison() {
        Bench without = Bench.of(Bench.sampleDefinition()
                .with(Address.of(new RecordId("G-002"), "tyre_mm"), Optional.empty())
                .with(Address.of(new RecordId("G-002"), "rollOut_mm"), Optional.empty()));
        String figure = "lowest-development lead rider";
        assertTrue(holds(BENCH, figure + " at least 0"));
        for (String condition : List.of(" at least 0", " at most 1000")) {
            assertEquals(false, holds(without, figure + condition));
            assertEquals(true, holds(without, "not " + figure + condition));
        }
    }
}
