package groupwright.workbench.cli;

import groupwright.definition.cassettes.Relaxation;
import groupwright.definition.record.Criterion;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;
import groupwright.documents.numbers.TargetText;
import groupwright.documents.trace.ShownValue;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What would have to give way, in one paragraph. */
final class RelaxationText {
    private static final int DECIMALS = 2;

    private final Reader reader;
    private final TargetText targets;

    RelaxationText(Reader reader) {
        this.reader = reader;
        this.targets = new TargetText(reader, Labels.of(reader.locale()));
    }

    /** Empty where nothing has to. */
    String of(Judgement.Relaxing relaxing) {
        if (relaxing instanceof Judgement.TooMany many) {
            return "What would have to give way is found by trying each cassette, and "
                    + reader.number(many.admitted().doubleValue(), 0) + " are left, more than "
                    + reader.number(Judgement.MOST_TRIED, 0)
                    + "; narrow ends and count, or add a limit such as --largest-step.\n";
        } else if (relaxing instanceof Judgement.Tried tried) {
            return String.join(" ", sentences(tried.outcome())) + "\n";
        }
        return "";
    }

    private List<String> sentences(Relaxation.Outcome outcome) {
        List<String> sentences = new ArrayList<>();
        String tried = reader.number(outcome.tried(), 0);
        if (outcome.example().isPresent()) {
            sentences.add("Of all " + tried + " tried, " + reader.number(outcome.free(), 0)
                    + (outcome.free() == 1 ? " misses nothing: " : " miss nothing, for example ")
                    + CassettesReport.cogs(outcome.example().get()) + "; add as objectives what they lead in.");
            return sentences;
        }
        sentences.add("Of all " + tried + " tried, none misses nothing.");
        if (!outcome.outOfReach().isEmpty()) {
            sentences.add("Out of reach: "
                    + outcome.outOfReach().stream()
                            .map(part -> named(part) + " ("
                                    + targets.of(part.criterion().criterion()) + "), " + value(part) + " at best")
                            .collect(Collectors.joining("; "))
                    + ".");
        }
        if (!outcome.alone().isEmpty()) {
            sentences.add("One relaxed alone would do: "
                    + outcome.alone().stream().map(this::needed).collect(Collectors.joining("; or "))
                    + ".");
        }
        outcome.smallest()
                .filter(smallest -> smallest.parts().size() > 1)
                .ifPresent(smallest -> sentences.add("No single one would do; the fewest are "
                        + smallest.parts().size() + ": " + needed(smallest) + "."));
        return sentences;
    }

    private String needed(Relaxation relaxation) {
        return relaxation.parts().stream()
                        .map(part -> named(part) + " from "
                                + targets.of(part.criterion().criterion()) + " to " + value(part) + change(part))
                        .collect(Collectors.joining(", "))
                + ", which lets pass " + CassettesReport.cogs(relaxation.cassette());
    }

    private String named(Relaxation.Part part) {
        return part.criterion().name() + " \"" + part.criterion().requirement().title() + "\"";
    }

    private String change(Relaxation.Part part) {
        return Double.isFinite(part.byPct()) ? " (" + reader.number(part.byPct(), 1) + " %)" : "";
    }

    /** Rounded to the side on which the cassette still meets it. */
    private String value(Relaxation.Part part) {
        Criterion criterion = part.criterion().criterion();
        boolean up = criterion.comparator() == Criterion.Comparator.AT_MOST
                || criterion
                        .upper()
                        .filter(upper -> part.target() > upper.value())
                        .isPresent();
        // what stands behind the ninth digit comes from rounding in the figure
        double rounded = new BigDecimal(String.format(Locale.ROOT, "%.9f", part.target()))
                .setScale(DECIMALS, up ? RoundingMode.CEILING : RoundingMode.FLOOR)
                .doubleValue();
        return new ShownValue(reader.exact(rounded), criterion.unit()).text();
    }
}
