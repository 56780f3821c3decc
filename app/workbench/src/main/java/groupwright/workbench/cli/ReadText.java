package groupwright.workbench.cli;

import groupwright.definition.ledger.Read;
import groupwright.definition.record.RecordKind;
import java.util.List;

/** In words, what a figure read that is no field: which records there are, and who names whom. */
final class ReadText {
    private ReadText() {}

    /** Each once, in the order of reading. */
    static List<String> of(List<Read> reads) {
        return reads.stream().map(ReadText::of).distinct().toList();
    }

    private static String of(Read read) {
        if (read instanceof Read.OfField field) {
            return field.address().toString();
        } else if (read instanceof Read.Presence presence) {
            return "whether there is a record " + presence.record();
        } else if (read instanceof Read.Members members) {
            return which(members.kind());
        } else if (read instanceof Read.Block block) {
            return which(block.kind());
        } else if (read instanceof Read.Referring referring) {
            return "which records name "
                    + referring.target().map(Object::toString).orElse("nothing") + " in "
                    + referring.reference().path().get(0);
        }
        Read.Circle circle = (Read.Circle) read;
        return "whether the way from " + circle.from() + " along "
                + circle.next().path().get(0) + " ends";
    }

    private static String which(RecordKind<?> kind) {
        return "which " + kind.noun() + " records there are";
    }
}
