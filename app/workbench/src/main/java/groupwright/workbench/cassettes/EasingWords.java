package groupwright.workbench.cassettes;

import groupwright.definition.cassettes.Relaxation;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What would have to give way, in words. */
final class EasingWords {
    private static final int DECIMALS = 2;
    private static final int MOST_ALONE = 3;

    private final CassetteWords say;

    EasingWords(CassetteWords say) {
        this.say = say;
    }

    /** Which cassettes were tried and what is the least that would have to give way. */
    String of(Easing.Eased eased) {
        List<String> sentences = new ArrayList<>();
        Relaxation.Outcome outcome = eased.outcome();
        eased.outcome()
                .smallest()
                .ifPresent(smallest -> sentences.add(say.words()
                        .text(
                                "ease.smallest",
                                smallest.parts().stream().map(this::part).collect(Collectors.joining(", ")),
                                Candidate.cogs(smallest.cassette()))));
        if (!outcome.outOfReach().isEmpty()) {
            sentences.add(say.words()
                    .text(
                            "ease.outOfReach",
                            outcome.outOfReach().stream().map(this::nearest).collect(Collectors.joining(", "))));
        }
        if (outcome.alone().size() > 1) {
            sentences.add(say.words()
                    .text(
                            "ease.alone",
                            outcome.alone().stream()
                                    .limit(MOST_ALONE)
                                    .map(one -> part(one.parts().get(0)))
                                    .collect(Collectors.joining(", "))));
        }
        sentences.add(say.words().text("ease.tried." + eased.tried(), say.number(outcome.tried(), 0)));
        return String.join(" ", sentences);
    }

    private String part(Relaxation.Part part) {
        return part("ease.part", part);
    }

    private String nearest(Relaxation.Part part) {
        return part("ease.nearest", part);
    }

    private String part(String kind, Relaxation.Part part) {
        Criterion criterion = part.criterion().criterion();
        String unit = criterion.unit().isEmpty() ? "" : "\u202F" + criterion.unit();
        boolean most = criterion.comparator() == Criterion.Comparator.AT_MOST;
        return say.words()
                .text(
                        kind + (most ? ".most" : ".least"),
                        part.criterion().requirement().id(),
                        say.number(
                                        criterion.target().value(),
                                        decimals(criterion.target().value()))
                                + unit,
                        say.number(part.target(), decimals(part.target())) + unit);
    }

    private static int decimals(double value) {
        double hundred = Math.rint(value * 100) / 100;
        return hundred == Math.rint(hundred) ? 0 : hundred * 10 == Math.rint(hundred * 10) ? 1 : DECIMALS;
    }

    /** The requirements that speak of it. */
    static List<RecordId> requirements(Easing.Eased eased) {
        List<Relaxation.Part> parts = new ArrayList<>(eased.outcome().outOfReach());
        eased.outcome().smallest().ifPresent(smallest -> parts.addAll(smallest.parts()));
        return parts.stream()
                .map(part -> part.criterion().requirement().id())
                .distinct()
                .sorted()
                .toList();
    }
}
