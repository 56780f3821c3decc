package groupwright.documents.project;

import groupwright.definition.cassettes.DecisionDraft;
import groupwright.definition.cassettes.Study;
import groupwright.documents.charts.TradeOff;
import groupwright.documents.labels.Labels;
import groupwright.drivetrain.search.Coverage;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.LargestStep;
import groupwright.drivetrain.search.Limit;
import groupwright.drivetrain.search.Neighbour;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.drivetrain.search.Standing;
import java.util.ArrayList;
import java.util.List;

/** What a study of cassettes says in the words and digits of one reader. */
final class StudyText {
    private static final double NONE = 0.005;

    private final Sheet sheet;
    private final Study study;
    private final Labels labels;

    StudyText(Sheet sheet, Study study) {
        this.sheet = sheet;
        this.study = study;
        this.labels = sheet.labels();
    }

    String question() {
        Question asked = study.best().question();
        Coverage coverage = study.best().coverage();
        String limit = asked.limits().all().stream()
                .filter(LargestStep.class::isInstance)
                .map(LargestStep.class::cast)
                .map(step -> labels.text("study.withStep", number(Objective.LARGEST_STEP, step.pct())))
                .findFirst()
                .orElse("");
        return labels.text(
                "study.question",
                span(asked.count()),
                span(asked.smallest()),
                span(asked.largest()),
                limit,
                count(coverage.candidates().doubleValue()),
                count(coverage.admitted().doubleValue()),
                count(study.best().count()),
                String.join(
                        labels.text("list.separator"),
                        asked.ordered().stream().map(this::said).toList()));
    }

    private String count(double cassettes) {
        return sheet.reader().number(cassettes, 0);
    }

    private String span(Span span) {
        return span.least() == span.most()
                ? Integer.toString(span.least())
                : labels.text("target.between", Integer.toString(span.least()), Integer.toString(span.most()));
    }

    String name(Objective objective) {
        return labels.text("study." + objective.id());
    }

    /** Within a sentence. */
    private String said(Objective objective) {
        return labels.text("study.said." + objective.id());
    }

    String head(Objective objective) {
        return labels.text(
                "tradeOff.column",
                name(objective),
                sheet.reader().in(objective.unit()).unit());
    }

    TradeOff.Axis axis(Objective objective) {
        return new TradeOff.Axis(name(objective), objective.unit());
    }

    String inBestSet() {
        return labels.text("study.inBestSet", count(study.best().count()));
    }

    String number(Objective objective, double value) {
        return sheet.reader().in(objective.unit()).number(value, decimals(objective));
    }

    private static int decimals(Objective objective) {
        return switch (objective) {
            case LARGEST_STEP, GEAR_RANGE -> 1;
            case UNEVENNESS, MISMATCH -> 2;
            case MASS -> 0;
        };
    }

    /** A letter, or the concept whose cogs these are. */
    String place(int row, Found found) {
        return found.equals(study.own())
                ? study.concept().id().text()
                : String.valueOf((char) ('a' + row % 26)) + (row < 26 ? "" : Integer.toString(row / 26));
    }

    String change(Objective objective, double change) {
        return Math.abs(change) < NONE ? "—" : (change > 0 ? "+" : "") + number(objective, change);
    }

    String keeps(Neighbour neighbour) {
        return neighbour
                .broken()
                .map(limit -> labels.text("study.breaks", limit(limit)))
                .orElse("");
    }

    private String limit(Limit limit) {
        return limit instanceof LargestStep step
                ? labels.text("study.stepAtMost", number(Objective.LARGEST_STEP, step.pct()))
                : limit.id();
    }

    String standing(Standing standing) {
        String concept = study.concept().id().text();
        if (standing instanceof Standing.Best) {
            return labels.text("study.best", concept);
        } else if (standing instanceof Standing.Beaten beaten) {
            List<String> leads = new ArrayList<>();
            beaten.lead().forEach((objective, lead) -> {
                if (lead > NONE) {
                    leads.add(lead(objective, lead));
                }
            });
            return labels.text(
                    "study.beaten",
                    concept,
                    DecisionDraft.teeth(beaten.by().cassette()),
                    String.join(labels.text("list.separator"), leads));
        } else if (standing instanceof Standing.Breaks breaks) {
            return labels.text("study.breaksLimit", concept, limit(breaks.limit()));
        }
        return labels.text("study.outside", concept);
    }

    private String lead(Objective objective, double lead) {
        return labels.text(
                "study.lead",
                said(objective),
                sheet.reader().in(objective.unit()).text(lead, decimals(objective)));
    }

    /** What another does better and worse than the concept's own. */
    String against(String place, Found other) {
        List<String> better = new ArrayList<>();
        List<String> worse = new ArrayList<>();
        for (Objective objective : study.best().question().ordered()) {
            double lead = Standing.lead(objective, other.values(), study.own().values());
            if (Math.abs(lead) >= NONE) {
                (lead > 0 ? better : worse).add(lead(objective, Math.abs(lead)));
            }
        }
        String none = labels.text("study.nothing");
        String separator = labels.text("list.separator");
        return labels.text(
                "study.against",
                place,
                DecisionDraft.teeth(other.cassette()),
                better.isEmpty() ? none : String.join(separator, better),
                worse.isEmpty() ? none : String.join(separator, worse));
    }
}
