package groupwright.workbench.start;

import groupwright.documents.numbers.Measures;
import groupwright.documents.pages.PaperSize;
import groupwright.documents.project.Format;
import java.util.Arrays;
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
 * @param paper what their pages are printed on
 * @param measures what units computed numbers are shown in
 * @param formats what files are written; none is a choice, though nothing is written then
 */
public record DocumentChoices(String language, PaperSize paper, Measures measures, Set<Format> formats) {
    /** At the first start. */
    public static final DocumentChoices USUAL =
            new DocumentChoices("", PaperSize.A4, Measures.METRIC, EnumSet.of(Format.PDF));

    private static final String LANGUAGE = "documents.language";
    private static final String PAPER = "documents.paper";
    private static final String MEASURES = "documents.measures";
    private static final String FORMATS = "documents.formats";

    public DocumentChoices {
        Objects.requireNonNull(language, "language");
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(measures, "measures");
        formats = formats.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(formats));
    }

    /** The language documents are in. */
    public Locale locale(Locale window) {
        return language.isEmpty() ? window : Locale.forLanguageTag(language);
    }

    public DocumentChoices in(String tag) {
        return new DocumentChoices(tag, paper, measures, formats);
    }

    public DocumentChoices on(PaperSize other) {
        return new DocumentChoices(language, other, measures, formats);
    }

    public DocumentChoices with(Measures others) {
        return new DocumentChoices(language, paper, others, formats);
    }

    public DocumentChoices as(Set<Format> others) {
        return new DocumentChoices(language, paper, measures, others);
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
        return new DocumentChoices(
                read.getProperty(LANGUAGE, USUAL.language),
                named(PaperSize.values(), read.getProperty(PAPER), USUAL.paper),
                named(Measures.values(), read.getProperty(MEASURES), USUAL.measures),
                formats);
    }

    private static <E extends Enum<E>> E named(E[] all, String name, E usual) {
        return Arrays.stream(all)
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElse(usual);
    }

    void into(Properties write) {
        write.setProperty(LANGUAGE, language);
        write.setProperty(PAPER, paper.name());
        write.setProperty(MEASURES, measures.name());
        write.setProperty(FORMATS, names(formats));
    }

    private static String names(Set<Format> formats) {
        return formats.stream().map(Format::name).collect(Collectors.joining(","));
    }
}
