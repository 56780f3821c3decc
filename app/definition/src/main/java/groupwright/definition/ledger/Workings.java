package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.record.Address;
import java.util.List;

/**
 * How an answer came about.
 *
 * @param ask the question
 * @param answer the answer
 * @param band how well it is known
 * @param inputs fields that the figure itself read, in the order of reading
 * @param others what else it read: which records there are, who refers to whom
 * @param uses the other figures it asked, with their answers, in the order of asking
 */
public record Workings(Ask ask, Answer answer, Band band, List<FieldInput> inputs, List<Read> others, List<Use> uses) {
    public Workings {
        inputs = List.copyOf(inputs);
        others = List.copyOf(others);
        uses = List.copyOf(uses);
    }

    /** A field that went in: its address, value and unit; the value is empty where the field is. */
    public record FieldInput(Address address, Object value, String unit) {
        /** The value as one exact text, the same for the same value. */
        public String text() {
            return ValueText.of(value);
        }

        /** Address and value in one line, as approvals keep them. */
        public String line() {
            return address + " = " + text();
        }
    }

    /** Another figure that was asked. */
    public record Use(Ask ask, Answer answer) {}
}
