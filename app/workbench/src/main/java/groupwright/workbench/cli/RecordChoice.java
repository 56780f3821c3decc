package groupwright.workbench.cli;

import groupwright.definition.figure.Nearest;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import java.util.ArrayList;
import java.util.List;

/** Records named on the command line. */
final class RecordChoice {
    private static final int MOST_SHOWN = 12;

    private RecordChoice() {}

    /**
     * The records of a kind with these ids.
     *
     * @throws Refusal naming the first that is none
     */
    static List<RecordId> of(Definition definition, RecordKind<? extends Entry> kind, List<String> names) {
        List<RecordId> chosen = new ArrayList<>();
        for (String name : names) {
            chosen.add(RecordId.parse(name)
                    .filter(id -> id.letters().equals(kind.letters()))
                    .filter(id -> definition.get(id).isPresent())
                    .orElseThrow(() -> unknown(definition, name, kind.letters())));
        }
        return chosen.stream().distinct().sorted().toList();
    }

    /** Why a name is no record of the kind with these letters. */
    static Refusal unknown(Definition definition, String name, String letters) {
        RecordKind<? extends Entry> kind = RecordKinds.byLetters(letters).orElseThrow();
        List<String> there =
                definition.all(kind).stream().map(entry -> entry.id().text()).toList();
        String wrong = "there is no " + kind.noun() + " " + name + " in this project";
        if (there.isEmpty()) {
            return Refusal.of(wrong, "it has none; add " + kind.folder() + "/" + kind.letters() + "-001.json");
        } else if (there.size() <= MOST_SHOWN) {
            return Refusal.of(wrong, "it has " + String.join(", ", there));
        }
        return Refusal.of(
                wrong,
                Nearest.of(name, there)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("it has " + there.get(0) + " to " + there.get(there.size() - 1)));
    }
}
