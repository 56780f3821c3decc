package groupwright.workbench.workings;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.documents.trace.ShownValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the panel shows of one figure: texts in the reader's language and digits, with the places they lead to.
 *
 * @param ask the question
 * @param name the figure's name
 * @param about what it is asked of, in words
 * @param concept whose sign stands before that
 * @param value the answer
 * @param standing whether there is one
 * @param before the answer before the last step, where that changed it
 * @param judged the requirements that ask for it, the worst verdict first
 * @param formula in symbols
 * @param goesIn fields and other figures that went in, in reading order
 * @param missing what is missing, with the field to fill
 * @param knowledge how well it is known
 * @param movers what moves it, most first; empty where it is no number
 * @param source where the formula is published
 * @param leavesOut what it neglects; may be empty
 * @param others the same figure of the other concepts
 * @param chain from need to page
 */
public record WorkingsSheet(
        Ask ask,
        String name,
        String about,
        Optional<RecordId> concept,
        ShownValue value,
        Standing standing,
        Optional<ShownValue> before,
        List<Judged> judged,
        String formula,
        List<Input> goesIn,
        List<MissingField> missing,
        Knowledge knowledge,
        List<Mover> movers,
        String source,
        String leavesOut,
        List<Other> others,
        List<Link> chain) {
    /** Whether there is an answer. */
    public enum Standing {
        NUMBER,
        LIST,
        WORD,
        MISSING
    }

    /**
     * A requirement that asks for the figure.
     *
     * @param target for example "at most 18 %"
     */
    public record Judged(RecordId requirement, String criterion, Verdict verdict, String target) {}

    /**
     * One thing that went in.
     *
     * @param leadsTo a field, or another question
     * @param changed whether the last step changed it
     */
    public record Input(String label, ShownValue value, Target leadsTo, String place, Changed changed) {}

    /** Whether the last step changed something. */
    public enum Changed {
        YES,
        NO
    }

    /** Where a link leads. */
    public sealed interface Target {}

    /** To a field or record. */
    public record ToField(Address address) implements Target {}

    /** To the workings of another figure. */
    public record ToFigure(Ask ask) implements Target {}

    /** To a document, by the name it is asked for. */
    public record ToDocument(String name) implements Target {}

    /** Nowhere. */
    public record Nowhere() implements Target {}

    /** An input that is missing. */
    public record MissingField(Address address, String remedy) {}

    /**
     * How well the answer is known.
     *
     * @param words in words
     * @param band lower and upper end with the target between or beside them; nothing where there is no band
     * @param parts what makes it up, largest first
     * @param advice what would settle a verdict that is too close to call; may be empty
     */
    public record Knowledge(String words, Optional<Span> band, List<Part> parts, String advice) {}

    /** A band as a line. */
    public record Span(
            double low, double value, double high, Optional<Double> target, String lowText, String highText) {}

    /** What one input adds to the band. */
    public record Part(String label, String band, String effect, Address address) {}

    /**
     * An input that moves the answer.
     *
     * @param change what was tried, for example "190 → 191.9 W"
     * @param effect what the answer did, for example "+0.6 rpm"
     */
    public record Mover(String label, String change, String effect, Address address) {}

    /** The figure of another concept. */
    public record Other(RecordId concept, Ask ask, ShownValue value, Optional<Verdict> verdict) {}

    /** A stage of the way from need to page. */
    public enum Step {
        NEED,
        REQUIREMENT,
        FIGURE,
        TEST,
        CLAIM,
        PAGE
    }

    /**
     * A pin of the chain.
     *
     * @param there whether something stands there
     */
    public record Link(Step step, String text, Target leadsTo, There there, Changed changed) {}

    /** What a pin of the chain stands for. */
    public enum There {
        HERE,
        SOMETHING,
        NOTHING_YET
    }

    /** The same with the pages it stands on at the end of the chain. */
    public WorkingsSheet onPages(List<Link> pages) {
        List<Link> longer = new ArrayList<>(chain);
        longer.addAll(pages);
        return new WorkingsSheet(
                ask, name, about, concept, value, standing, before, judged, formula, goesIn, missing, knowledge, movers,
                source, leavesOut, others, longer);
    }

    public WorkingsSheet {
        judged = List.copyOf(judged);
        goesIn = List.copyOf(goesIn);
        missing = List.copyOf(missing);
        movers = List.copyOf(movers);
        others = List.copyOf(others);
        chain = List.copyOf(chain);
    }
}
