package groupwright.documents.pages;

import java.util.List;

/**
 * A finished file.
 *
 * @param bytes the file
 * @param warnings one sentence each on what could not be shown as written; empty as a rule
 */
public record RenderedPdf(byte[] bytes, List<String> warnings) {
    public RenderedPdf {
        bytes = bytes.clone();
        warnings = List.copyOf(warnings);
    }

    /** A copy of the file's bytes. */
    @Override
    public byte[] bytes() {
        return bytes.clone();
    }
}
