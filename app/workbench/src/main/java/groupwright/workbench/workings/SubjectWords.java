package groupwright.workbench.workings;

import groupwright.definition.figure.Ask;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a question is about, in words. */
public final class SubjectWords {
    private SubjectWords() {}

    /** For example {@code G-002 All-day trail rider · climb steep-12}; the concept has its sign beside this. */
    public static String besideConcept(Definition definition, Ask ask) {
        return of(definition, ask).replaceFirst("^C-[0-9]+( · )?", "");
    }

    /** For example {@code C-002 · G-002 All-day trail rider · climb steep-12}. */
    public static String of(Definition definition, Ask ask) {
        List<String> words = new ArrayList<>();
        for (RecordId id : ask.subject().ids()) {
            words.add(id.hasLetters("C") ? id.text() : named(definition, id));
        }
        for (Map.Entry<String, String> given : ask.givenParameters().values().entrySet()) {
            words.add(given.getKey().replace('-', ' ') + " " + given.getValue());
        }
        return String.join(" · ", words);
    }

    /** Id and title. */
    public static String named(Definition definition, RecordId id) {
        return definition
                .get(id)
                .map(Entry::title)
                .map(title -> id + " " + title)
                .orElse(id.text());
    }
}
