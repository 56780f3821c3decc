package groupwright.workbench.documents;

import groupwright.workbench.start.DocumentChoices;
import java.nio.file.Path;

/** What the place of documents keeps outside the project. Event thread, except where a path is used. */
public interface DocumentsKeeping {
    /** The folder for it, which need not exist yet. */
    Path folder();

    /** How documents are shown and written. */
    DocumentChoices choices();

    /** Keeps other choices. */
    void choose(DocumentChoices choices);
}
