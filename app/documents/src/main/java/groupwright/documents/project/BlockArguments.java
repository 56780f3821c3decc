package groupwright.documents.project;

import groupwright.definition.figure.FigureText;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Settings;
import java.util.List;
import java.util.Optional;

/**
 * What stands behind a block's name: records, {@code lead}, and settings, in the figure grammar.
 *
 * @param block the block's name
 * @param read the text
 */
record BlockArguments(String block, FigureText read) {
    /**
     * Reads arguments.
     *
     * @param known names of the settings the block has
     * @throws Invalid for a word that is neither a record nor a setting, or a setting the block does not have
     */
    static BlockArguments of(String block, String arguments, List<String> known) {
        FigureText read = FigureText.parse(block + " " + arguments);
        for (String name : read.parameters().values().keySet()) {
            if (!known.contains(name)) {
                throw new Invalid(
                        "",
                        block + " has no setting " + name,
                        known.isEmpty() ? "leave it out" : "use " + String.join(" or ", known));
            }
        }
        return new BlockArguments(block, read);
    }

    /** The concept named, or the lead concept where none is. */
    Concept concept(Sheet sheet) {
        return one(sheet, Concept.class, "concept")
                .orElseGet(() ->
                        sheet.definition().get(sheet.lead(), Concept.class).orElseThrow());
    }

    /**
     * The one record named.
     *
     * @param word what such a record is called, for the sentence of a refusal
     * @throws Invalid if it is not in the project, of another kind, or one of several
     */
    <T extends Entry> Optional<T> one(Sheet sheet, Class<T> kind, String word) {
        if (read.records().size() > 1) {
            throw new Invalid("", block + " takes one " + word, "name one, and write a block for each");
        }
        return read.records().stream().findFirst().map(id -> found(sheet, kind, word, id));
    }

    private static <T extends Entry> T found(Sheet sheet, Class<T> kind, String word, RecordId id) {
        return sheet.definition()
                .get(id, kind)
                .orElseThrow(() -> new Invalid("", "there is no " + word + " " + id, "name one of the project"));
    }

    /** A setting that is a number from 0. */
    Optional<Double> number(String name) {
        return read.parameters().get(name).map(text -> fromZero(name, text));
    }

    /** A number from 0. */
    static double fromZero(String name, String text) {
        if (!Settings.isNumber(text) || Double.parseDouble(text) < 0) {
            throw new Invalid("", name + " is \"" + text + "\"", "write a number from 0");
        }
        return Double.parseDouble(text);
    }
}
