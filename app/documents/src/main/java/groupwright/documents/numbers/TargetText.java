package groupwright.documents.numbers;

import groupwright.definition.record.Criterion;
import groupwright.documents.labels.Labels;

/** What a criterion asks, in words. */
public final class TargetText {
    private final Reader reader;
    private final Labels labels;

    public TargetText(Reader reader, Labels labels) {
        this.reader = reader;
        this.labels = labels;
    }

    /** For example "at least 50 rpm". */
    public String of(Criterion criterion) {
        Measured measured = reader.in(criterion.unit());
        String target = measured.exact(criterion.target().value());
        String text = switch (criterion.comparator()) {
            case AT_LEAST -> labels.text("target.atLeast", target);
            case AT_MOST -> labels.text("target.atMost", target);
            case BETWEEN ->
                labels.text(
                        "target.between",
                        target,
                        measured.exact(criterion.upper().orElseThrow().value()));
        };
        return measured.with(text).text();
    }
}
