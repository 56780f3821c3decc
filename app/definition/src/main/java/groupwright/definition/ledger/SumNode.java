package groupwright.definition.ledger;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.RecordKind;

/** A branch of a tree of sums over the records of a kind. */
final class SumNode extends Derived {
    /** 16 to the power of levels exceeds the largest number in an id, 999 999. */
    static final int TOP = 4;

    final Key key;

    SumNode(Key key) {
        this.key = key;
    }

    /** Which branch of which tree. */
    record Key(Figure figure, RecordKind<?> kind, Subject rest, int level, int index) {
        Key child(int which) {
            return new Key(figure, kind, rest, level - 1, 16 * index + which);
        }
    }
}
