package groupwright.definition.figures;

import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import java.util.Optional;

/** The concept that a figure compares with. */
final class Reference {
    /** Which concept it is. */
    static final Parameter AGAINST = Parameter.word(
            "against", "lead", "the concept to compare with, for example C-001; lead is the lead concept");

    private Reference() {}

    /** The same riders with the reference concept. */
    static Subject subject(Inputs in) {
        return Subject.of(concept(in), in.subject(Scope.RIDERS));
    }

    private static RecordId concept(Inputs in) {
        String named = in.word(AGAINST.name());
        if (named.equals("lead")) {
            return in.get(RecordId.PROJECT, Project.LEAD_CONCEPT)
                    .orElseThrow(() -> in.missing(
                            RecordId.PROJECT,
                            Project.LEAD_CONCEPT,
                            "choose a lead concept, or say against which to compare"));
        }
        Optional<RecordId> id = RecordId.parse(named)
                .filter(found -> found.hasLetters(Scope.CONCEPT.letters()))
                .filter(in::exists);
        return id.orElseThrow(() -> in.missing(
                RecordId.PROJECT,
                Project.LEAD_CONCEPT,
                "there is no concept " + named + " to compare with; write against=C-… with one of the project"));
    }
}
