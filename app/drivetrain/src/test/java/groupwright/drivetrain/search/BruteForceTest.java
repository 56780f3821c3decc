package groupwright.drivetrain.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.gearing.Cassette;
import java.math.BigInteger;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The search against trying all cassettes, on small random questions. */
class BruteForceTest {
    static LongStream seeds() {
        return LongStream.range(0, 600);
    }

    private static Optional<Question> question(RandomQuestions ask) {
        try {
            return Optional.of(ask.question());
        } catch (Contradiction refused) {
            return Optional.empty();
        }
    }

    private static AllCassettes admitted(RandomQuestions ask) {
        AllCassettes all = AllCassettes.within(ask);
        for (Limit limit : ask.limits().all()) {
            all = all.keeping(limit);
        }
        return all;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void findsTheSameSetAsTryingAll(long seed) {
        var ask = RandomQuestions.of(new Random(seed));
        AllCassettes admitted = admitted(ask);
        Optional<Question> question = question(ask);
        if (question.isEmpty()) {
            assertEquals(List.of(), admitted.cassettes(), "a question was refused that has answers");
            return;
        }
        BestSet best = CassetteSearch.find(question.get(), Progress.NONE);
        List<Cassette> found = best.stream().map(Found::cassette).toList();
        assertEquals(best.count(), found.size());
        assertEquals(found.size(), new HashSet<>(found).size(), "each cassette once");
        assertEquals(new HashSet<>(admitted.unbeaten(ask)), new HashSet<>(found));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void countsTheSameAsTryingAll(long seed) {
        var ask = RandomQuestions.of(new Random(seed));
        Optional<Question> question = question(ask);
        if (question.isEmpty()) {
            return;
        }
        Coverage coverage = Coverage.of(question.get());
        AllCassettes left = AllCassettes.within(ask);
        assertEquals(BigInteger.valueOf(left.cassettes().size()), coverage.candidates());
        for (Coverage.Removed removed : coverage.removed()) {
            AllCassettes kept = left.keeping(removed.limit());
            assertEquals(
                    BigInteger.valueOf(
                            left.cassettes().size() - kept.cassettes().size()),
                    removed.cassettes(),
                    removed.limit().id());
            left = kept;
        }
        assertEquals(BigInteger.valueOf(left.cassettes().size()), coverage.admitted());
    }

    /** The cases above are worth something only if they are not all easy. */
    @Test
    void theRandomQuestionsHoldTiesLimitsAndContradictions() {
        int tied = 0;
        int tiedWithoutLargestStep = 0;
        int several = 0;
        int refused = 0;
        int limited = 0;
        for (long seed : seeds().toArray()) {
            var ask = RandomQuestions.of(new Random(seed));
            Optional<Question> question = question(ask);
            refused += question.isEmpty() ? 1 : 0;
            if (question.isPresent()) {
                BestSet best = CassetteSearch.find(question.get(), Progress.NONE);
                boolean ties = best.count() > best.values();
                tied += ties ? 1 : 0;
                tiedWithoutLargestStep += ties && !ask.objectives().contains(Objective.LARGEST_STEP) ? 1 : 0;
                several += best.values() > 1 ? 1 : 0;
                limited += best.coverage().removed().stream()
                                .anyMatch(removed -> removed.cassettes().signum() > 0)
                        ? 1
                        : 0;
            }
        }
        String counts = "tied %d, of sums alone %d, several %d, refused %d, limited %d"
                .formatted(tied, tiedWithoutLargestStep, several, refused, limited);
        assertTrue(
                tied >= 60 && tiedWithoutLargestStep >= 10 && several >= 200 && refused >= 5 && limited >= 200, counts);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void saysOfEachCassetteWhereItStands(long seed) {
        var ask = RandomQuestions.of(new Random(seed));
        Optional<Question> question = question(ask);
        if (question.isEmpty()) {
            return;
        }
        BestSet best = CassetteSearch.find(question.get(), Progress.NONE);
        Set<Cassette> set = new HashSet<>(admitted(ask).unbeaten(ask));
        for (Cassette cassette : AllCassettes.within(ask).cassettes()) {
            Standing standing = best.standing(cassette);
            Optional<Limit> broken = ask.limits().all().stream()
                    .filter(limit -> !AllCassettes.keeps(cassette, limit))
                    .findFirst();
            assertEquals(set.contains(cassette), standing instanceof Standing.Best);
            assertEquals(
                    broken,
                    standing instanceof Standing.Breaks breaks ? Optional.of(breaks.limit()) : Optional.empty());
            if (standing instanceof Standing.Beaten beaten) {
                Cassette by = beaten.by().cassette();
                assertTrue(set.contains(by));
                assertTrue(AllCassettes.beats(AllCassettes.values(by, ask), AllCassettes.values(cassette, ask)));
                assertEquals(ask.objectives(), beaten.lead().keySet());
                beaten.lead().forEach((objective, lead) -> assertTrue(lead > -1e-3, objective + " " + lead));
            }
        }
    }
}
