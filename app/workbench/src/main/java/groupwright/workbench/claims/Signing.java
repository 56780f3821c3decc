package groupwright.workbench.claims;

import groupwright.definition.assessment.Approving;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Decisions about claims as edits of the project. */
final class Signing {
    private Signing() {}

    /** What came of asking for an approval: the claim as it was and as approved, or why not. */
    sealed interface Outcome {
        /** It may be said. */
        record Approved(Claim before, Claim after) implements Outcome {}

        /** It may not. */
        record Refused(Invalid why) implements Outcome {}
    }

    /** Approves on what the ledger answers now. Ledger thread. */
    static Outcome approve(View view, RecordId id, String by, LocalDate date) {
        try {
            Claim after = Approving.approve(view, id, by.strip(), date);
            return new Outcome.Approved(view.definition().get(id, Claim.class).orElseThrow(), after);
        } catch (Invalid why) {
            return new Outcome.Refused(why);
        }
    }

    /** Writes an approval down, unless the claim was edited since it was looked at. */
    static UnaryOperator<Definition> write(Outcome.Approved approved) {
        return definition -> {
            RecordId id = approved.after().id();
            if (!definition.get(id).equals(Optional.of(approved.before()))) {
                throw new Invalid("", id + " was edited meanwhile", "look at it again, then approve");
            }
            return definition.with(approved.after());
        };
    }

    static UnaryOperator<Definition> withdraw(RecordId id, String reason) {
        return definition -> definition.with(Approving.withdraw(claim(definition, id), reason.strip()));
    }

    static UnaryOperator<Definition> propose(RecordId id) {
        return definition -> definition.with(Approving.propose(claim(definition, id)));
    }

    private static Claim claim(Definition definition, RecordId id) {
        return definition
                .get(id, Claim.class)
                .orElseThrow(() -> new Invalid("", "there is no claim " + id, "it may have been removed"));
    }
}
