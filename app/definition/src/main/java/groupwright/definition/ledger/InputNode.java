package groupwright.definition.ledger;

/** A read and what it gave. */
abstract class InputNode extends Node {
    Object value;

    InputNode(Object value) {
        this.value = value;
    }

    /** What is read. */
    abstract Read read();

    /** What it gives in another place. */
    abstract Object valueIn(Source source);

    /** A read of anything but a field. */
    static final class Other extends InputNode {
        private final Read read;

        Other(Read read, Object value) {
            super(value);
            this.read = read;
        }

        @Override
        Read read() {
            return read;
        }

        @Override
        Object valueIn(Source source) {
            return source.read(read);
        }
    }
}
