package groupwright.documents.pages;

import groupwright.documents.trace.Trace;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What lies where in a document.
 *
 * @param headings for each page
 * @param numbers for each page
 * @param links for each page
 */
record PagePlaces(
        List<OutlineEntry> outline,
        List<List<PaintedHeading>> headings,
        List<List<PaintedNumber>> numbers,
        List<List<PageLink>> links) {
    /** The raised part of a digit, as a share of its size; those of Inter are 0.73 high. */
    private static final double DIGIT_HEIGHT = 0.8;

    private record Place(int page, double top) {}

    static PagePlaces of(List<Recorder.Recorded> pages, Trace trace) {
        Map<String, Place> anchors = new HashMap<>(); // looked up only
        List<OutlineEntry> outline = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            int page = i;
            pages.get(i).anchors().forEach(anchor -> anchors.putIfAbsent(anchor.name(), new Place(page, anchor.top())));
            pages.get(i)
                    .titles()
                    .forEach(title -> outline.add(new OutlineEntry(
                            title.heading().level(),
                            title.heading().title(),
                            page,
                            title.top(),
                            title.heading().line())));
        }
        return new PagePlaces(
                List.copyOf(outline),
                pages.stream()
                        .map(page ->
                                page.titles().stream().map(PagePlaces::heading).toList())
                        .toList(),
                pages.stream()
                        .map(page -> page.numbers().stream()
                                .map(number -> number(number, trace))
                                .toList())
                        .toList(),
                pages.stream()
                        .map(page -> page.jumps().stream()
                                .map(jump -> link(jump, anchors))
                                .toList())
                        .toList());
    }

    private static PaintedHeading heading(Recorder.Title title) {
        Canvas.Outlined heading = title.heading();
        Area room = heading.room();
        Area area = new Area(room.x(), title.top() + room.y(), room.width(), room.height());
        return new PaintedHeading(heading.level(), heading.title(), heading.line(), area);
    }

    private static PaintedNumber number(Recorder.Sighting sighting, Trace trace) {
        Piece.Number number = sighting.number();
        double size = number.size();
        String shown = number.value().stream().map(Run::text).collect(Collectors.joining());
        Area area = Area.between(
                sighting.x(),
                sighting.baseline() - DIGIT_HEIGHT * size,
                sighting.x() + number.valueWidth(),
                sighting.baseline() + LinePainter.BELOW);
        return new PaintedNumber(number.use(), trace.entry(number.use().entry()), shown, area);
    }

    private static PageLink link(Recorder.Jump jump, Map<String, Place> anchors) {
        Place place = anchors.get(jump.anchor());
        if (place == null) {
            throw new IllegalStateException("a link leads to " + jump.anchor() + ", which is nowhere");
        }
        return new PageLink(jump.area(), place.page(), place.top());
    }
}
