package groupwright.workbench.start;

import groupwright.documents.project.Format;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How a user wants documents shown and written; an immutable value.
 *
 * @param language tag of their language; empty means that of the window
 * @param formats what files are written; none is a choice, though nothing is written then
 */
public record DocumentChoices(String language, Set<Format> formats) {
    /** At the first start. */
    public static final DocumentChoices USUAL = new DocumentChoices("", EnumSet.of(Format.PDF));

    private static final String LANGUAGE = "documents.language";
    private static final String FORMATS = "documents.formats";

    public DocumentChoices {
        Objects.requireNonNull(language, "language");
        formats = formats.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(formats));
    }

    /** The language documents are in. */
    public Locale locale(Locale window) {
        return language.isEmpty() ? window : Locale.forLanguageTag(language);
    }

    public DocumentChoices in(String tag) {
        return new DocumentChoices(tag, formats);
    }

    public DocumentChoices as(Set<Format> others) {
        return new DocumentChoices(language, others);
    }

    /** Reads them; what is missing or unknown is as usual. */
    static DocumentChoices of(Properties read) {
        Set<Format> formats = EnumSet.noneOf(Format.class);
        String named = read.getProperty(FORMATS, names(USUAL.formats));
        for (Format format : Format.values()) {
            if (Set.of(named.split(",")).contains(format.name())) {
                formats.add(format);
            }
        }
        return new DocumentChoices(read.getProperty(LANGUAGE, USUAL.language), formats);
    }

    void into(Properties write) {
        write.setProperty(LANGUAGE, language);
        write.setProperty(FORMATS, names(formats));
    }

    private static String names(Set<Format> formats) {
        return formats.stream().map(Format::name).collect(Collectors.joining(","));
    }
}
