package groupwright.drivetrain.search;

import static groupwright.drivetrain.search.Objective.MASS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.drivetrain.mass.SprocketMass;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A question without an answer says in one sentence why and what to do. */
class ContradictionTest {
    private static Arguments says(String sentence, Executable question) {
        return Arguments.of(sentence, question);
    }

    private static Executable limited(Limit... limits) {
        return () -> Question.of(10, 30, 8, MASS).with(Limits.of(limits));
    }

    static Stream<Arguments> contradictions() {
        return Stream.of(
                says(
                        "a range from 12 to 10 ends before it begins; write the smaller number first",
                        () -> new Span(12, 10)),
                says(
                        "the largest cog, at most 10 teeth, is not above the smallest, at least 11; swap or change the ends",
                        () -> Question.of(11, 10, 2, MASS)),
                says(
                        "8 cogs do not fit between 10 and 16 teeth, which leave room for 7; ask for fewer cogs or move the ends",
                        () -> Question.of(10, 16, 8, MASS)),
                says(
                        "the smallest cog may be 5 to 80 teeth, not 4 to 4; keep within these bounds",
                        () -> Question.of(4, 30, 8, MASS)),
                says(
                        "the number of cogs may be 2 to 20 cogs, not 1 to 1; keep within these bounds",
                        () -> Question.of(10, 30, 1, MASS)),
                says(
                        "no objective is chosen, so no cassette beats another; choose at least one",
                        () -> new Question(
                                Span.of(10), Span.of(30), Span.of(8), Limits.NONE, Set.of(), SprocketMass.ASSUMED)),
                says(
                        "cog 17 is both forced and forbidden; take it out of one list",
                        limited(ForcedCogs.of(List.of(14, 17)), ForbiddenCogs.of(List.of(17, 19)))),
                says(
                        "forced cog 32 lies outside 10 to 30 teeth; move the ends or take it out of the list",
                        limited(ForcedCogs.of(List.of(14, 32)))),
                says(
                        "9 cogs are forced, but a cassette may have at most 8; force fewer or allow more cogs",
                        limited(ForcedCogs.of(List.of(11, 12, 13, 14, 15, 16, 17, 18, 19)))),
                says(
                        "the driver body takes no cog below 11 teeth, but the smallest cog may have at most 10; raise the smallest cog or choose another driver body",
                        limited(new DriverBody(11))),
                says(
                        "every smallest cog from 10 to 10 teeth is forbidden; allow one of them",
                        limited(ForbiddenCogs.of(List.of(10)))),
                says(
                        "every largest cog from 30 to 30 teeth is forbidden; allow one of them",
                        limited(ForbiddenCogs.of(List.of(30)))),
                says(
                        "7 jumps of at most 2 teeth do not lead from 10 to 30; allow larger jumps or more cogs",
                        limited(new LargestJump(2))),
                says(
                        "7 steps of at most 12.5 % do not lead from 10 to 30 teeth; allow larger steps or more cogs",
                        limited(new LargestStep(12.5, 0))),
                says(
                        "8 steps are given one by one, but a cassette of 8 cogs has 7; shorten the list or allow more cogs",
                        limited(StepsByPosition.of(30, 30, 30, 30, 30, 30, 30, 30))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("contradictions")
    void isToldInOneSentence(String sentence, Executable question) {
        assertEquals(sentence, assertThrows(Contradiction.class, question).getMessage());
    }

    /** Hard to see from outside is no contradiction: the answer is empty, and the coverage tells which limit did it. */
    @Test
    void whatOnlyCountingShowsIsAnEmptyAnswer() {
        Question question =
                Question.of(10, 30, 8, MASS).with(Limits.of(new LikePositions(3, 0), new LargestStep(20, 0)));
        BestSet best = CassetteSearch.find(question, Progress.NONE);
        assertEquals(0, best.count());
        assertEquals(0, best.coverage().admitted().signum());
        assertEquals(
                best.coverage().candidates(), best.coverage().removed().get(0).cassettes());
    }

    @Test
    void aQuestionTooLargeSaysWhatToNarrow() {
        Question question = Question.of(10, 50, 12, Objective.values());
        String sentence = assertThrows(Contradiction.class, () -> CassetteSearch.find(question, Progress.NONE, 10_000))
                .getMessage();
        assertEquals(
                "this question needs more partial cassettes to be kept than there is room for; narrow ends and count or set limits",
                sentence);
    }
}
