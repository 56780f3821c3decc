package groupwright.documents.numbers;

import groupwright.definition.record.Criterion;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.ShownValue;

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
        String target = reader.exact(criterion.target().value());
        String text = switch (criterion.comparator()) {
            case AT_LEAST -> labels.text("target.atLeast", target);
            case AT_MOST -> labels.text("target.atMost", target);
            case BETWEEN ->
                labels.text(
                        "target.between",
                        target,
                        reader.exact(criterion.upper().orElseThrow().value()));
        };
        return new ShownValue(text, criterion.unit()).text();
    }
}
