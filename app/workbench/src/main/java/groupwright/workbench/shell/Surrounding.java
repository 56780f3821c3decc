package groupwright.workbench.shell;

import groupwright.workbench.start.DataFolder;
import groupwright.workbench.start.Preferences;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * What a window is opened with.
 *
 * @param data where the program keeps what is its own
 * @param preferences as they were read
 * @param sample the sample as it came with the program, if it lies beside it
 * @param locale the reader's language and country
 */
record Surrounding(DataFolder data, Preferences preferences, Optional<Path> sample, Locale locale) {
    Surrounding with(Preferences other) {
        return new Surrounding(data, other, sample, locale);
    }

    /** With another language; an empty tag is that of the system. */
    Surrounding in(String tag) {
        return new Surrounding(
                data, preferences, sample, tag.isEmpty() ? Locale.getDefault() : Locale.forLanguageTag(tag));
    }
}
