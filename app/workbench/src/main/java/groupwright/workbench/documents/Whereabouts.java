package groupwright.workbench.documents;

import groupwright.definition.project.ProjectFiles;
import java.nio.file.Path;

/**
 * Where the project lies and what its files say.
 *
 * @param folder the project's folder, which may hold templates of its own
 */
public record Whereabouts(Path folder, ProjectFiles files) {
    /** Where documents are written: beside the project, not among its records. */
    Path out() {
        Path whole = folder.toAbsolutePath().normalize();
        return whole.resolveSibling(whole.getFileName() + "-documents");
    }
}
