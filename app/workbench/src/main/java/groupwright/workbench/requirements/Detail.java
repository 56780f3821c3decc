package groupwright.workbench.requirements;

import groupwright.definition.assessment.Rung;
import groupwright.definition.quality.Finding;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.workbench.components.Ladder;
import java.util.List;
import java.util.Map;

/**
 * One requirement in full.
 *
 * @param findings what makes the statement hard to verify, with the places of the words in it
 * @param answers the needs it answers
 * @param about rider groups, weight, owner and state in words
 * @param reached for each rung what was reached and by what
 * @param next what would move it one rung up
 * @param relaxing the nearest target that any concept meets, one sentence for each criterion not met
 * @param standing what can be done with it
 */
record Detail(
        RecordId id,
        String title,
        String statement,
        List<Advice> findings,
        String why,
        List<Link> answers,
        String about,
        Ladder ladder,
        Map<Rung, String> reached,
        Next next,
        List<String> relaxing,
        Standing standing) {
    /** A finding with the short name of what was looked for. */
    record Advice(String title, Finding finding) {}

    /** A text that leads to a record or field. */
    record Link(String text, String tip, Address leadsTo) {}

    /**
     * What to do next.
     *
     * @param fields where it is done; may be empty
     */
    record Next(String sentence, List<Link> fields) {
        Next {
            fields = List.copyOf(fields);
        }
    }

    /** What can be done with a requirement as a whole. */
    enum Standing {
        IN_USE,
        PARKED,
        RETIRED;

        static Standing of(Requirement requirement) {
            if (!requirement.isCurrent()) {
                return RETIRED;
            }
            return requirement.state() == Requirement.State.PARKED ? PARKED : IN_USE;
        }
    }

    Detail {
        findings = List.copyOf(findings);
        answers = List.copyOf(answers);
        reached = Map.copyOf(reached);
        relaxing = List.copyOf(relaxing);
    }
}
