package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;

/** An answer in the ledger. */
final class AnswerNode extends Derived {
    final Ask ask;
    BandNode band; // made when somebody asks how well the answer is known; null until then

    AnswerNode(Ask ask) {
        this.ask = ask;
    }

    Answer answer() {
        return (Answer) result;
    }
}
