package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Computes one branch of a tree of sums. */
final class Sums {
    /** Stands for the question behind a branch, which has no figure of its own. */
    static final Ask SUM = new Ask(
            Figure.named("sum-over-records", "Sum over records")
                    .level(Level.COVERAGE)
                    .formula("sum of a figure over the records of a kind")
                    .source("elementary arithmetic")
                    .example("sum-over-records", "0")
                    .computedBy(in -> new Series(Unit.NONE, List.of())),
            Subject.NONE,
            Settings.NONE);

    private Sums() {}

    static Series compute(SumNode.Key key, Reading in) {
        List<Series> parts = new ArrayList<>();
        List<?> branches = (List<?>) in.read(new Read.Block(key.kind(), key.level(), key.index()));
        for (Object branch : branches) {
            if (key.level() == 0) {
                Subject subject = key.rest().with((RecordId) branch);
                Answer answer = in.answer(new Ask(key.figure(), subject, Settings.NONE));
                if (!(answer instanceof Series series)) {
                    throw new IllegalStateException(key.figure().id() + " must give a series for " + subject);
                }
                parts.add(series);
            } else {
                parts.add(in.total(key.child((Integer) branch)));
            }
        }
        return add(parts);
    }

    private static Series add(List<Series> parts) {
        Map<String, Double> totals = new LinkedHashMap<>();
        Unit unit = Unit.NONE;
        for (Series part : parts) {
            if (!part.values().isEmpty()) {
                unit = part.unit();
            }
            part.values().forEach(at -> totals.merge(at.at(), at.value(), Double::sum));
        }
        List<Series.At> sums = new ArrayList<>();
        totals.forEach((at, value) -> sums.add(new Series.At(at, value)));
        return new Series(unit, sums);
    }
}
