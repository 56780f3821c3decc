package groupwright.workbench.notation;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The records of one kind that a field may name; O(records) for each question. */
public final class RecordChoices {
    private static final Pattern ID = Pattern.compile("([A-Za-z]{1,3})-?([0-9]{1,6})(?:\\s.*)?", Pattern.DOTALL);

    private final Supplier<Definition> definition;
    private final RecordKind<?> kind;

    RecordChoices(Supplier<Definition> definition, RecordKind<?> kind) {
        this.definition = definition;
        this.kind = kind;
    }

    /** The records in use that fit what was typed, best first. */
    public List<Found> find(String typed) {
        return Ranking.rank(typed, all(Use.CURRENT));
    }

    private enum Use {
        CURRENT,
        ANY
    }

    private List<Found> all(Use use) {
        List<Found> all = new ArrayList<>();
        for (Entry entry : definition.get().all(kind)) {
            if (use == Use.ANY || entry.isCurrent()) {
                all.add(new Found(entry.id().text(), entry.title(), "", ""));
            }
        }
        return all;
    }

    /** A record as it stands in a field; its bare id where it is not there. */
    public String shown(RecordId id) {
        return definition.get().get(id).map(entry -> id + " " + entry.title()).orElse(id.text());
    }

    /** The records a typed text can mean: one by its id, written with or without zeros in front; else all whose titles have the words. */
    List<RecordId> meant(String text) {
        Optional<RecordId> byId = byId(text.strip());
        if (byId.isPresent()) {
            return List.of(byId.get());
        }
        String typed = text.strip().toLowerCase(Locale.ROOT);
        List<Found> all = all(Use.ANY);
        List<RecordId> exact = ids(all.stream()
                .filter(found -> found.title().toLowerCase(Locale.ROOT).equals(typed))
                .toList());
        return exact.size() == 1 ? exact : ids(Ranking.rank(text, all));
    }

    private static List<RecordId> ids(List<Found> found) {
        return found.stream().map(one -> new RecordId(one.id())).toList();
    }

    /** The id at the beginning of a text, if there is such a record of this kind. */
    Optional<RecordId> byId(String text) {
        Matcher id = ID.matcher(text);
        if (!id.matches() || !id.group(1).equalsIgnoreCase(kind.letters())) {
            return Optional.empty();
        }
        RecordId typed = new RecordId(kind.letters() + "-"
                + "0".repeat(Math.max(0, 3 - id.group(2).length())) + id.group(2));
        return definition.get().get(typed).map(Entry::id);
    }
}
