package groupwright.workbench.documents;

import groupwright.documents.project.Obstacle;
import java.util.List;

/**
 * A template as it is shown.
 *
 * @param name of its document
 * @param text as it is on disk, or as it was typed since
 * @param problem why it cannot be read; empty where it can
 * @param obstacles what was wrong with it when its document was made last
 */
record TemplateSheet(String name, String text, Standing standing, String problem, List<Obstacle> obstacles) {
    /** How the text stands. */
    enum Standing {
        /** The program's own. */
        PROGRAMS,
        /** The project's copy of one of the program's, saved. */
        COPY,
        /** The project's own, saved. */
        OWN,
        /** Typed since it was saved. */
        UNSAVED,
        /** Typed since, and the file on disk is another by now. */
        CHANGED_ON_DISK,
        /** A file that cannot be read. */
        UNREADABLE;

        boolean isEditable() {
            return this != PROGRAMS && this != UNREADABLE;
        }
    }

    TemplateSheet {
        obstacles = List.copyOf(obstacles);
    }
}
