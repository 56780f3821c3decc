package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Word;
import java.util.List;

/** How claims stand. */
public final class ClaimFigures implements FigureFamily {
    /** The state of a claim as a word, see {@link ClaimState}. */
    public static final String CLAIM_STATE = "claim-state";

    @Override
    public List<Figure> figures() {
        return List.of(Figure.named(CLAIM_STATE, "State of the claim")
                .of(Scope.CLAIM)
                .level(Level.COVERAGE)
                .formula(
                        "withdrawn, proposed, unsupported, changed since approval, recalculated or holds, in this order: the"
                                + " first whose condition is true")
                .source("House rule: say only what is approved, still true and supported.")
                .leavesOut("Whether a reader understands more than the words say.")
                .example("claim-state K-901", "holds")
                .computedBy(ClaimFigures::state));
    }

    private static Answer state(Inputs in) {
        Standing standing = new ClaimCheck(in, in.subject(Scope.CLAIM)).standing();
        return new Word(standing.state().word(), standing.detail());
    }

    /** How a claim stands and why. */
    record Standing(ClaimState state, String detail) {}
}
