package groupwright.definition.ledger;

/** How well an answer is known. */
final class BandNode extends Derived {
    final AnswerNode of;

    BandNode(AnswerNode of) {
        this.of = of;
    }
}
