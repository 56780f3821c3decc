package groupwright.workbench.cli;

import groupwright.definition.problem.Problem;
import groupwright.definition.record.Invalid;
import java.util.List;

/** What was asked cannot be answered: the command line is wrong, or what it names cannot be read. */
final class Refusal extends RuntimeException {

    private final transient List<Problem> problems;

    Refusal(List<Problem> problems) {
        super(problems.get(0).sentence());
        this.problems = List.copyOf(problems);
    }

    static Refusal of(String wrong, String remedy) {
        return new Refusal(List.of(Problem.ofFile("", wrong, remedy)));
    }

    /** A refusal in one sentence that says behind its last semicolon, if it has one, what to do. */
    static Refusal saying(String sentence) {
        int remedy = sentence.lastIndexOf("; ");
        return remedy < 0 ? of(sentence, "") : of(sentence.substring(0, remedy), sentence.substring(remedy + 2));
    }

    /** A refusal of a figure text or a value. */
    static Refusal of(Invalid invalid) {
        return new Refusal(List.of(new Problem("", 0, 0, "", invalid.field(), invalid.wrong(), invalid.remedy())));
    }

    List<Problem> problems() {
        return problems;
    }
}
