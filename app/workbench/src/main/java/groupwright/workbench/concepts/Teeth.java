package groupwright.workbench.concepts;

import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Changes the teeth of one concept; each change is one edit, named by what it changed. */
final class Teeth {
    private final Bench bench;
    private final Words words;
    private final RecordId concept;
    private final Consumer<String> says;

    /** Makes the changing of one concept's teeth; is told where to say why something is refused. */
    interface Maker {
        Teeth of(RecordId concept, Consumer<String> says);
    }

    /** @param says shows a sentence beside the teeth; an empty one clears it */
    Teeth(Bench bench, Words words, RecordId concept, Consumer<String> says) {
        this.bench = bench;
        this.words = words;
        this.concept = concept;
        this.says = says;
    }

    RecordId concept() {
        return concept;
    }

    Words words() {
        return words;
    }

    /** The sentence of a refusal. */
    String sentence(ToothRow row, ToothRow.Refused refused) {
        return words.text(
                "refused." + row.field() + "." + refused.key(), refused.parts().toArray());
    }

    void say(String sentence) {
        says.accept(sentence);
    }

    /**
     * Edits a row.
     *
     * @param change made on the row as it is when the edit runs, so that keys pressed fast add up
     */
    void edit(ToothRow row, Function<List<Integer>, ToothRow.Outcome> change) {
        say("");
        bench.edit(Optional.empty(), definition -> after(definition, row, change), invalid -> say(refusal(invalid)));
    }

    private Definition after(Definition definition, ToothRow row, Function<List<Integer>, ToothRow.Outcome> change) {
        List<Integer> teeth = definition
                .get(concept, Concept.class)
                .map(row::of)
                .orElseThrow(() -> new Invalid("", "there is no concept " + concept, "add it first"));
        ToothRow.Outcome outcome = change.apply(teeth);
        if (outcome instanceof ToothRow.Refused refused) {
            throw new Invalid(row.field(), sentence(row, refused), "");
        }
        return new ToothEdit(concept, row, ((ToothRow.Changed) outcome).teeth()).of(definition);
    }

    private static String refusal(Invalid invalid) {
        return invalid.remedy().isEmpty() ? invalid.wrong() : invalid.wrong() + "; " + invalid.remedy() + ".";
    }
}
