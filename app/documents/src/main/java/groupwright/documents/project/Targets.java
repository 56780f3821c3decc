package groupwright.documents.project;

import groupwright.definition.record.Criterion;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;

/** What a criterion asks, in words. */
final class Targets {
    private final Reader reader;
    private final Labels labels;

    Targets(Reader reader, Labels labels) {
        this.reader = reader;
        this.labels = labels;
    }

    /** For example "at least 50 rpm". */
    String of(Criterion criterion) {
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
        if (criterion.unit().isEmpty()) {
            return text;
        }
        return text + (criterion.unit().startsWith("°") ? "" : "\u202F") + criterion.unit();
    }
}
