package groupwright.workbench.shell;

import groupwright.definition.history.Conflict;
import groupwright.definition.record.Entry;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.look.Words;
import java.util.Optional;

/** A conflict in words. */
final class ConflictWords {
    private static final int LONGEST = 40;

    private final Words words;
    private final AnswerText text;

    ConflictWords(Words words) {
        this.words = words;
        this.text = new AnswerText(new Reader(words.locale()));
    }

    String sentence(Conflict conflict) {
        String what = conflict.address().path().isEmpty()
                ? conflict.address().record().text()
                : conflict.address().record() + " " + FieldLabel.of(conflict.address());
        return words.text("conflict", what, shown(conflict.ours()), shown(conflict.theirs()));
    }

    /** What of an undone edit was left, because somebody changed it since. */
    String left(Conflict conflict) {
        String what = conflict.address().path().isEmpty()
                ? conflict.address().record().text()
                : conflict.address().record() + " " + FieldLabel.of(conflict.address());
        return words.text("conflict.left", what, shown(conflict.ours()));
    }

    String ours(Conflict conflict) {
        return words.text("conflict.ours", shown(conflict.ours()));
    }

    String theirs(Conflict conflict) {
        return words.text("conflict.theirs", shown(conflict.theirs()));
    }

    private String shown(Optional<Object> value) {
        if (value.isEmpty()) {
            return words.text("conflict.nothing");
        }
        String shown = value.get() instanceof Entry entry
                ? entry.title()
                : text.input(value.get(), "").text();
        return shown.length() <= LONGEST
                ? shown
                : shown.substring(0, LONGEST - 1).stripTrailing() + "…";
    }
}
