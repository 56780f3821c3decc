package groupwright.drivetrain.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.mass.SprocketMass;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Listing all cassettes one by one, against trying all subsets and against counting. */
class EveryCassetteTest {
    private static List<Cassette> all(Question question) {
        List<Cassette> all = new ArrayList<>();
        EveryCassette.of(question).forEachRemaining(all::add);
        return all;
    }

    @Test
    void listsWhatCountingCounts() {
        int asked = 0;
        for (int seed = 0; seed < 400; seed++) {
            try {
                RandomQuestions random = RandomQuestions.of(new Random(seed));
                Question question = random.question();
                List<Cassette> all = all(question);
                assertEquals(Coverage.of(question).admitted(), BigInteger.valueOf(all.size()), "seed " + seed);
                List<Cassette> tried = AllCassettes.within(random).cassettes().stream()
                        .filter(cassette ->
                                question.limits().firstBrokenBy(cassette).isEmpty())
                        .toList();
                assertEquals(new HashSet<>(tried), new HashSet<>(all), "seed " + seed);
                asked++;
            } catch (Contradiction contradiction) {
                continue; // the random limits leave nothing to ask
            }
        }
        assertTrue(asked > 200, asked + " questions");
    }

    @Test
    void comesInOrder() {
        Iterator<Cassette> few = EveryCassette.of(new Question(
                new Span(10, 11), Span.of(13), Span.of(3), Limits.NONE, Set.of(Objective.MASS), SprocketMass.ASSUMED));
        assertEquals("10 11 13, 10 12 13, 11 12 13", joined(few));
        assertThrows(NoSuchElementException.class, few::next);
    }

    private static String joined(Iterator<Cassette> cassettes) {
        List<String> words = new ArrayList<>();
        cassettes.forEachRemaining(cassette -> words.add(String.join(
                " ",
                cassette.cogs().stream()
                        .map(cog -> Integer.toString(cog.teeth()))
                        .toList())));
        return String.join(", ", words);
    }
}
