package groupwright.documents.project;

import groupwright.definition.record.Claim;
import groupwright.documents.charts.TrailMap;
import groupwright.documents.charts.TrailMap.Layer;
import groupwright.documents.charts.TrailMap.Station;
import groupwright.documents.content.Inline;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.InputText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The trail of a requirement in words, ready to be drawn. */
final class TrailPicture {
    /** More fields than this are counted by record instead of listed. */
    private static final int MOST_FIELDS = 12;

    private TrailPicture() {}

    static TrailMap of(Sheet sheet, Trail trail) {
        Labels labels = sheet.labels();
        String id = trail.requirement().id().text();
        return new TrailMap(
                labels.text("trail.title", id),
                labels.text("trail.caption"),
                List.of(
                        layer(labels, "said", needs(sheet, trail)),
                        layer(
                                labels,
                                "asked",
                                List.of(new Station(
                                        id + " " + trail.requirement().title(),
                                        trail.requirement().statement()))),
                        layer(labels, "measured", criteria(sheet, trail)),
                        layer(labels, "answered", answers(sheet, trail)),
                        layer(labels, "kept", fields(sheet, trail)),
                        layer(labels, "claimed", claims(sheet, trail))));
    }

    private static Layer layer(Labels labels, String name, List<Station> stations) {
        return new Layer(labels.text("trail.layer." + name), stations, labels.text("trail.gap." + name));
    }

    private static List<Station> needs(Sheet sheet, Trail trail) {
        return trail.needs().stream()
                .map(need -> new Station(need.id().text(), sheet.quoted(need)))
                .toList();
    }

    private static List<Station> criteria(Sheet sheet, Trail trail) {
        return trail.steps().stream()
                .map(step -> new Station(
                        step.criterion().figure()
                                + sheet.parameters(step.criterion().parameters()),
                        sheet.targets().of(step.criterion())))
                .toList();
    }

    private static List<Station> answers(Sheet sheet, Trail trail) {
        List<Station> answers = new ArrayList<>();
        for (Trail.Step step : trail.steps()) {
            String verdict = sheet.labels().text(Marks.verdict(step.verdict()).labelKey());
            answers.add(step.ask()
                    .map(ask ->
                            new Station(((Inline.Live) sheet.live(ask)).shown().text(), ask.subject() + ", " + verdict))
                    .orElse(new Station("—", verdict)));
        }
        return answers;
    }

    private static List<Station> fields(Sheet sheet, Trail trail) {
        Map<String, Station> fields = new TreeMap<>();
        Map<String, Integer> records = new TreeMap<>();
        InputText text =
                new InputText(sheet.text(), sheet.definition().project().currency());
        trail.steps()
                .forEach(step -> step.inputs().forEach(input -> {
                    String address = input.address().toString();
                    String value = FieldLabel.of(input.address()) + " "
                            + text.of(input).text();
                    if (!input.text().isEmpty() && fields.put(address, new Station(address, value)) == null) {
                        records.merge(input.address().record().text(), 1, Integer::sum);
                    }
                }));
        if (fields.size() <= MOST_FIELDS) {
            return List.copyOf(fields.values());
        }
        return records.entrySet().stream()
                .map(record -> new Station(
                        record.getKey(),
                        sheet.labels().text("trail.fields", record.getValue().toString())))
                .toList();
    }

    private static List<Station> claims(Sheet sheet, Trail trail) {
        return sheet.assessment().claims().stream()
                .filter(standing -> trail.claims().contains(standing.claim()))
                .map(standing -> station(
                        standing.claim(),
                        sheet.labels().text("claim." + standing.state().name())))
                .toList();
    }

    /** By its state only: the wording of a claim that does not hold is in no document. */
    private static Station station(Claim claim, String state) {
        return new Station(claim.id().text(), state);
    }
}
