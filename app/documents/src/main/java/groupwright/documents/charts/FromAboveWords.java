package groupwright.documents.charts;

import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Measured;
import java.util.List;
import java.util.stream.Collectors;

/** What a drawing from above says in words. */
final class FromAboveWords {
    private static final int DECIMALS = 1;

    private final FromAbove above;
    private final Labels labels;
    private final Measured length;

    FromAboveWords(FromAbove above) {
        this.above = above;
        this.labels = Labels.of(above.reader().locale());
        this.length = above.reader().in("mm");
    }

    String title() {
        return labels.text("above.title", above.bike());
    }

    String caption() {
        String concepts = names(above.entrants().stream()
                .map(FromAbove.Entrant::concept)
                .sorted()
                .toList());
        String across = Integer.toString(FromAbove.ACROSS);
        String drawn =
                labels.text(above.entrants().size() == 1 ? "above.captionOne" : "above.caption", concepts, across);
        return above.lacking().isEmpty() ? drawn : drawn + "; " + labels.text("above.lacking", names(above.lacking()));
    }

    private String names(List<String> names) {
        return String.join(labels.text("list.separator"), names);
    }

    /** What stands at a ring. */
    String ring(FromAbove.Entrant entrant, FromAbove.Wheel ring) {
        String line = length.number(ring.lineMm(), DECIMALS);
        return entrant.rings().size() == 1
                ? labels.text("above.ring", entrant.concept(), line)
                : labels.text("above.ringOf", entrant.concept(), Integer.toString(ring.teeth()), line);
    }

    String centre() {
        return labels.text("above.centre", length.text(above.centreMm(), DECIMALS));
    }

    private static String gear(FromAbove.Entrant entrant) {
        return entrant.ring().teeth() + "/" + entrant.cog().teeth();
    }

    String description() {
        return labels.text(
                "above.description",
                above.bike(),
                above.entrants().stream()
                        .map(entrant -> labels.text(
                                        "above.concept",
                                        entrant.concept(),
                                        gear(entrant),
                                        length.text(entrant.ring().lineMm(), DECIMALS),
                                        length.text(entrant.cog().lineMm(), DECIMALS),
                                        entrant.angle())
                                + (entrant.verdict().isEmpty() ? "" : ", " + entrant.verdict()))
                        .collect(Collectors.joining("; ")));
    }

    ChartTable table() {
        List<String> heads = List.of(
                labels.text("ladder.concept"),
                labels.text("above.gear"),
                labels.text("above.verdict"),
                labels.text("above.front", length.unit()),
                labels.text("above.cogLine", length.unit()),
                labels.text("above.angle"));
        return new ChartTable(
                heads,
                3,
                above.entrants().stream()
                        .map(entrant -> List.of(
                                entrant.concept(),
                                gear(entrant),
                                entrant.verdict(),
                                length.number(entrant.ring().lineMm(), DECIMALS),
                                length.number(entrant.cog().lineMm(), DECIMALS),
                                entrant.angle()))
                        .toList());
    }
}
