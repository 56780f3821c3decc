package groupwright.definition.figure;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The figure grammar, the same wherever a figure is named: the figure's id, then records and parameters in any order,
 * parted by blanks, for example {@code largest-step C-002 from-teeth=14}. In place of a concept stands {@code lead} for the
 * lead concept of the project.
 *
 * @param figure id of the figure
 * @param records the records named
 * @param lead whether the lead concept is named
 * @param parameters the parameters given
 */
public record FigureText(String figure, List<RecordId> records, Lead lead, Settings parameters) {
    /** Whether the lead concept is part of the subject. */
    public enum Lead {
        NAMED,
        NOT_NAMED
    }

    public FigureText {
        records = List.copyOf(records);
    }

    /**
     * Reads a text.
     *
     * @throws Invalid if it is not in the grammar; says which word
     */
    public static FigureText parse(String text) {
        String[] words = text.strip().split("\\s+");
        if (words[0].isEmpty()) {
            throw new Invalid("", "names no figure", "write for example gear-range C-001");
        }
        List<RecordId> records = new ArrayList<>();
        TreeMap<String, String> parameters = new TreeMap<>();
        Lead lead = Lead.NOT_NAMED;
        for (int i = 1; i < words.length; i++) {
            String word = words[i];
            int equals = word.indexOf('=');
            if (equals > 0) {
                if (parameters.put(word.substring(0, equals), word.substring(equals + 1)) != null) {
                    throw new Invalid("", "\"" + word + "\" gives a parameter twice", "give it once");
                }
            } else if (word.equals("lead")) {
                lead = Lead.NAMED;
            } else {
                records.add(RecordId.parse(word)
                        .filter(id -> Scope.of(id.letters()).isPresent())
                        .orElseThrow(() -> new Invalid(
                                "",
                                "\"" + word + "\" is neither a record nor a parameter",
                                "write a record such as C-001 or a parameter such as from-teeth=14")));
            }
        }
        return new FigureText(words[0], records, lead, new Settings(parameters));
    }

    /**
     * The question this text asks.
     *
     * @param leadConcept what {@code lead} stands for
     * @throws Invalid if there is no such figure, or subject and parameters do not fit it
     */
    public Ask resolve(Catalogue catalogue, Optional<RecordId> leadConcept) {
        Figure found = catalogue.find(figure).orElseThrow(() -> unknown(catalogue));
        List<RecordId> named = new ArrayList<>(records);
        if (lead == Lead.NAMED) {
            named.add(leadConcept.orElseThrow(
                    () -> new Invalid(figure, "the project names no lead concept", "set leadConcept in project.json")));
        }
        Subject subject;
        try {
            subject = Subject.of(named);
        } catch (IllegalArgumentException twice) {
            throw new Invalid(figure, twice.getMessage(), "name each kind once");
        }
        return new Ask(found, subject, parameters);
    }

    private Invalid unknown(Catalogue catalogue) {
        String nearest = Nearest.of(
                        figure, catalogue.all().stream().map(Figure::id).toList())
                .map(id -> "did you mean " + id + "?")
                .orElse("see the list of figures");
        return new Invalid("", "there is no figure \"" + figure + "\"", nearest);
    }
}
