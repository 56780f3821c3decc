package groupwright.workbench.requirements;

import groupwright.definition.problem.Problem;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Lifecycle;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Takes up again what was parked, brings back what was retired. */
final class Lifting {
    private Lifting() {}

    static void lift(Bench bench, Row.Note note, Words words) {
        UnaryOperator<Definition> edit = note.step() == Row.Step.BRING_BACK
                ? definition -> Lifecycle.bringBack(definition, note.requirement())
                : definition -> Lifecycle.unpark(definition, note.requirement());
        String name = words.text("edit." + note.step().name(), note.requirement());
        bench.edit(
                Optional.of(name),
                edit,
                invalid -> bench.tell(new Problem(
                        "", 0, 0, note.requirement().text(), invalid.field(), invalid.wrong(), invalid.remedy())));
    }
}
