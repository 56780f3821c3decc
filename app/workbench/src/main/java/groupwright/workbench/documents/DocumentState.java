package groupwright.workbench.documents;

import groupwright.documents.labels.Labels;
import groupwright.documents.project.Preview;
import groupwright.documents.project.ProjectTemplates;
import groupwright.workbench.components.Mark;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Says how a document stands, for its row in the list. */
record DocumentState(Words words) {
    /**
     * What is known of it beside its pages.
     *
     * @param isWritten whether it was ever written
     * @param isDrafted whether its template has text that is not saved
     */
    record Standing(boolean isWritten, boolean isDrafted) {}

    /** A document that was made. */
    DocumentRow.Value of(DocumentsSheet sheet, Set<String> changed, Standing standing, boolean selected) {
        if (sheet.preview() instanceof Preview.Refused) {
            return new DocumentRow.Value(
                    sheet.title(),
                    "",
                    words.text(standing.isDrafted() ? "state.refused.draft" : "state.refused"),
                    Optional.of(Mark.MISSES),
                    selected);
        }
        List<String> says = new ArrayList<>();
        if (!changed.isEmpty()) {
            says.add(counted("state.changed", changed.size()));
        }
        if (sheet.missing() > 0) {
            says.add(counted("state.missing", sheet.missing()));
        }
        if (standing.isDrafted()) {
            says.add(words.text("state.draft"));
        }
        if (says.isEmpty()) {
            says.add(words.text(standing.isWritten() ? "state.same" : "state.unwritten"));
        }
        Optional<Mark> mark = !changed.isEmpty()
                ? Optional.of(Mark.CHANGED)
                : sheet.missing() > 0 ? Optional.of(Mark.MISSING) : Optional.empty();
        return new DocumentRow.Value(sheet.title(), pages(sheet), String.join(", ", says), mark, selected);
    }

    /** A document that is being made. */
    DocumentRow.Value waiting(String name, boolean selected) {
        return new DocumentRow.Value(
                ProjectTemplates.title(name, Labels.of(words.locale())),
                "",
                words.text("calculating"),
                Optional.empty(),
                selected);
    }

    private String pages(DocumentsSheet sheet) {
        return sheet.preview() instanceof Preview.Ready ready
                ? counted("pages", ready.document().pageCount())
                : "";
    }

    private String counted(String key, int count) {
        return words.text(count == 1 ? key + ".one" : key, Integer.toString(count));
    }
}
