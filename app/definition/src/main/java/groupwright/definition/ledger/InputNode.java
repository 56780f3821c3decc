package groupwright.definition.ledger;

/** A read and what it gave. */
final class InputNode extends Node {
    final Read read;
    Object value;

    InputNode(Read read, Object value) {
        this.read = read;
        this.value = value;
    }
}
