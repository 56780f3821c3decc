package groupwright.workbench.find;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Shape;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Everything that can be found in one state of a project, an immutable value. Making it costs as much as the project has
 * words; finding costs one pass over them.
 */
public final class FindIndex {
    private static final Pattern SHORT_ID = Pattern.compile("([a-z]{1,3})-?0*([0-9]+)");

    private final List<Place> places;

    /** Something that can be found, with its folded texts. */
    private record Place(Found found, String id, String title, String words) {}

    private FindIndex(List<Place> places) {
        this.places = List.copyOf(places);
    }

    /** The index of a project. */
    public static FindIndex of(Definition definition, Catalogue catalogue) {
        List<Place> places = new ArrayList<>();
        for (RecordKind<?> kind : RecordKinds.all()) {
            for (Entry record : definition.all(kind)) {
                places.add(record(kind, record));
            }
        }
        for (Ask ask : FindableFigures.of(definition, catalogue)) {
            places.add(figure(definition, ask));
        }
        return new FindIndex(places);
    }

    private static Place record(RecordKind<?> kind, Entry record) {
        Found found = new Found.OfRecord(
                Address.of(record.id()),
                record.id().text(),
                record.title(),
                kind.noun() + (record.isCurrent() ? "" : ", retired"));
        return new Place(found, folded(record.id().text()), folded(record.title()), folded(words(record)));
    }

    /** The texts of a record's own fields; those of its items would name what is found elsewhere. */
    private static String words(Entry record) {
        Shape<?> shape = Shape.of(record.getClass());
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < shape.components().size(); i++) {
            if (shape.components().get(i).type() instanceof FieldType.Text) {
                words.append(shape.value(record, i)).append('\n');
            }
        }
        return words.toString();
    }

    private static Place figure(Definition definition, Ask ask) {
        String subject = String.join(
                " ", ask.subject().ids().stream().map(RecordId::text).toList());
        String given = String.join(
                " ",
                ask.givenParameters().values().entrySet().stream()
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .toList());
        String titles = String.join(
                " ",
                ask.subject().ids().stream()
                        .flatMap(id -> definition.get(id).stream())
                        .map(Entry::title)
                        .toList());
        Found found = new Found.OfFigure(
                ask, subject, ask.figure().name(), given.isEmpty() ? titles : titles + " · " + given.replace('-', ' '));
        return new Place(
                found,
                folded(ask.figure().id()),
                folded(ask.figure().name() + " " + subject + " " + given),
                folded(ask.figure().id() + " " + subject + " " + titles + " " + given));
    }

    /**
     * What fits all words of a query, best first: the id itself, then titles that begin so, words of titles that do, then
     * anything that holds them; records in use before retired ones.
     *
     * @param query words in any order, any case, with or without accents; {@code r5} finds R-005
     */
    public List<Found> find(String query, int most) {
        String folded = folded(query.strip());
        if (folded.isEmpty()) {
            return List.of();
        }
        List<String> words = List.of(folded.split("\\s+"));
        record Ranked(Place place, int rank) {}
        return places.stream()
                .map(place -> new Ranked(place, rank(place, folded, words)))
                .filter(ranked -> ranked.rank() < Integer.MAX_VALUE)
                .sorted(Comparator.comparingInt(Ranked::rank)) // stable: else the order of kinds and ids
                .limit(most)
                .map(ranked -> ranked.place().found())
                .toList();
    }

    private static int rank(Place place, String query, List<String> words) {
        boolean figure = place.found() instanceof Found.OfFigure;
        int worse = figure ? 1 : place.found().detail().endsWith(", retired") ? 2 : 0;
        if (place.id().equals(query) || sameId(place.id(), query)) {
            return 0;
        } else if (place.title().startsWith(query)) {
            return 10 + worse;
        } else if (words.stream().allMatch(word -> begins(place.title(), word))) {
            return 20 + worse;
        } else if (words.stream().allMatch(word -> holds(place, word))) {
            return 30 + worse;
        }
        return Integer.MAX_VALUE;
    }

    private static boolean holds(Place place, String word) {
        return place.title().contains(word)
                || place.id().contains(word)
                || place.words().contains(word);
    }

    /** Whether a word of the text begins so. */
    private static boolean begins(String text, String word) {
        int at = text.indexOf(word);
        while (at > 0 && Character.isLetterOrDigit(text.charAt(at - 1))) {
            at = text.indexOf(word, at + 1);
        }
        return at >= 0;
    }

    private static boolean sameId(String id, String query) {
        Matcher asked = SHORT_ID.matcher(query);
        Matcher is = SHORT_ID.matcher(id);
        return asked.matches()
                && is.matches()
                && asked.group(1).equals(is.group(1))
                && asked.group(2).equals(is.group(2));
    }

    /** Lower case, without accents. */
    private static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
    }
}
