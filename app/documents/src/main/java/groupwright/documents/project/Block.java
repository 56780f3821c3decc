package groupwright.documents.project;

import groupwright.documents.content.BlockAnswer;

/** A block a template can name: it fills itself from the project. */
@FunctionalInterface
interface Block {
    /**
     * The block's content.
     *
     * @param arguments what stands behind its name in the template, maybe empty
     * @throws groupwright.definition.record.Invalid if the arguments make no sense
     */
    BlockAnswer fill(Sheet sheet, String arguments);
}
