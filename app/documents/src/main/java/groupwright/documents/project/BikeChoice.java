package groupwright.documents.project;

import groupwright.definition.record.Bike;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The bikes that documents speak of: those chosen, or all that are in use. Lists and loops of bikes leave the others out;
 * what looks for the worst of all bikes, as verdicts of requirements do, still looks at all.
 *
 * @param chosen in the order of ids, each once; none means all in use
 */
public record BikeChoice(List<RecordId> chosen) {
    /** All bikes in use. */
    public static final BikeChoice ALL = new BikeChoice(List.of());

    /** The names of more would make no name of a file. */
    private static final int MOST = 12;

    public BikeChoice {
        chosen = chosen.stream().distinct().sorted().toList();
    }

    /**
     * A choice of bikes in use.
     *
     * @throws Invalid naming the first that is no bike of the project or has left the list, or if there are too many
     */
    public static BikeChoice of(Definition definition, List<RecordId> bikes) {
        for (RecordId id : bikes) {
            Bike bike = definition
                    .get(id, Bike.class)
                    .orElseThrow(() -> new Invalid("", "there is no bike " + id, "name one of the project"));
            if (!bike.isCurrent()) {
                throw new Invalid(
                        "",
                        "the bike " + id + " has left the list (" + bike.retired() + ")",
                        "name one that is on it, or empty its field retired");
            }
        }
        BikeChoice choice = new BikeChoice(bikes);
        if (choice.chosen.size() > MOST) {
            throw new Invalid(
                    "", "these are " + choice.chosen.size() + " bikes", "choose at most " + MOST + ", or none for all");
        }
        return choice;
    }

    /** Whether documents speak of all bikes in use. */
    public boolean isAll() {
        return chosen.isEmpty();
    }

    /** The bikes documents speak of, in the order of ids. */
    List<Bike> bikes(Definition definition) {
        return definition.all(RecordKinds.BIKE).stream()
                .filter(bike -> bike.isCurrent() && holds(bike.id()))
                .toList();
    }

    boolean holds(RecordId bike) {
        return isAll() || chosen.contains(bike);
    }

    /** Ids behind a document's name, for the name of its file: {@code fit-B-004}. */
    String fileName(String document) {
        return chosen.stream().map(id -> "-" + id).collect(Collectors.joining("", document, ""));
    }
}
