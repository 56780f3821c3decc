package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Definition;
import java.util.List;

/** Answers about one definition: the ledger itself, or what it would say if something were otherwise. */
public interface View {
    /** The definition the answers are about. */
    Definition definition();

    /** The figures that can be asked. */
    Catalogue catalogue();

    /** The answer to a question. */
    Answer ask(Ask ask);

    /** How well that answer is known. */
    Band band(Ask ask);

    /**
     * What each banded input adds to the band, largest first; nothing where the band comes from a closed form, is not
     * stated, or there is none. Costs two runs for each banded input; nothing of it is kept.
     */
    List<BandPart> bandParts(Ask ask);

    /** Runs the figure once more and tells what it read and asked, in that order. */
    Workings explain(Ask ask);

    /**
     * Every field behind an answer, directly or through other figures, with its value, in the order of addresses.
     */
    List<Workings.FieldInput> trace(Ask ask);

    /** What it would say about another definition; good until the ledger behind it moves. */
    View fork(Definition other);
}
