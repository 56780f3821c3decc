package groupwright.workbench.documents;

import groupwright.documents.project.Preview;
import groupwright.documents.project.ProjectTemplates;
import java.util.Optional;

/**
 * One document as it was made last, an immutable value.
 *
 * @param name as it is asked for
 * @param title as it is shown
 * @param template what it was made from
 * @param preview its pages, or what stands in their way
 * @param numbers what its numbers read; nothing where there are no pages
 * @param missing how many of its numbers lack an input
 */
record DocumentsSheet(
        String name,
        String title,
        ProjectTemplates.Found template,
        Preview preview,
        Optional<WrittenNumbers.Texts> numbers,
        int missing) {}
