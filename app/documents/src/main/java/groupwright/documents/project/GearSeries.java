package groupwright.documents.project;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Series;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.trace.ShownValue;
import java.util.Collections;
import java.util.Map;

/**
 * A number of each gear.
 *
 * @param ask whose answer they are
 * @param values by gear; nothing where it cannot be answered or a gear has none
 */
record GearSeries(Sheet sheet, Ask ask, Map<String, Double> values) {
    GearSeries {
        values = Map.copyOf(values);
    }

    static GearSeries of(Sheet sheet, String question) {
        Ask ask = sheet.ask(question);
        return new GearSeries(sheet, ask, ConceptCharts.byPosition(sheet.view().ask(ask)));
    }

    /** The symbol it is kept with. */
    String unit() {
        Answer answer = sheet.view().ask(ask);
        return (answer instanceof Series series ? series.unit() : ask.figure().unit()).symbol();
    }

    /** The number of a gear without its unit, with the entry of all; a dash where it has none. */
    Phrase cell(String gear) {
        return values.containsKey(gear) ? Phrase.of(live(number(gear))) : Phrase.of(FieldText.NOTHING);
    }

    /** The size of a gear's number with its unit. */
    Inline size(String gear) {
        return live(sheet.reader()
                .in(unit())
                .with(sheet.reader()
                        .in(unit())
                        .number(Math.abs(values.get(gear)), ask.figure().decimals())));
    }

    private ShownValue number(String gear) {
        return ShownValue.of(
                sheet.reader().in(unit()).number(values.get(gear), ask.figure().decimals()));
    }

    private Inline live(ShownValue shown) {
        return new Inline.Live(shown, sheet.traces().entry(ask));
    }

    /** Whether no other gear has a worse number, as they are shown apart: equal ones are all the worst. */
    boolean isWorst(String gear, GearPath.WorstIs end) {
        return values.containsKey(gear)
                && values.get(gear)
                        .equals(
                                end == GearPath.WorstIs.LEAST
                                        ? Collections.min(values.values())
                                        : Collections.max(values.values()));
    }
}
