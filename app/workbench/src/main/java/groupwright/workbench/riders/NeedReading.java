package groupwright.workbench.riders;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads needs with who answers and who contradicts them. */
final class NeedReading {
    private final Definition definition;
    private final Words words;
    private final Map<RecordId, TreeSet<RecordId>> answers = new TreeMap<>();
    private final Map<RecordId, TreeSet<RecordId>> against = new TreeMap<>();

    NeedReading(Definition definition, Words words) {
        this.definition = definition;
        this.words = words;
        for (Requirement requirement : definition.all(RecordKinds.REQUIREMENT)) {
            if (requirement.isCurrent()) {
                requirement.answers().forEach(need -> add(answers, need, requirement.id()));
            }
        }
        for (Need need : definition.all(RecordKinds.NEED)) {
            for (RecordId other : need.contradicts()) { // said by one of them, true of both
                add(against, need.id(), other);
                add(against, other, need.id());
            }
        }
    }

    private static void add(Map<RecordId, TreeSet<RecordId>> to, RecordId key, RecordId value) {
        to.computeIfAbsent(key, any -> new TreeSet<>()).add(value);
    }

    List<NeedRow> needs() {
        return definition.all(RecordKinds.NEED).stream().map(this::row).toList();
    }

    private NeedRow row(Need need) {
        return new NeedRow(
                need.id(),
                "“" + need.words() + "”",
                need.riders(),
                words.text("source." + need.source().name()),
                need.importance(),
                need.date().map(new Reader(words.locale())::day).orElse(""),
                List.copyOf(against.getOrDefault(need.id(), new TreeSet<>())),
                List.copyOf(answers.getOrDefault(need.id(), new TreeSet<>())),
                need.note(),
                need.retired());
    }
}
