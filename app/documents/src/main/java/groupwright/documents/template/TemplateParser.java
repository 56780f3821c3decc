package groupwright.documents.template;

import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Document;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** Markdown with double braces, and where each piece of it stands. */
final class TemplateParser {
    private TemplateParser() {}

    static Document parse(String markdown, Limits limits) {
        return (Document) of(limits).parse(markdown);
    }

    static Parser of(Limits limits) {
        return Parser.builder()
                .extensions(List.of(TablesExtension.create()))
                .customInlineContentParserFactory(new PlaceholderParser.Factory())
                .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                .maxOpenBlockParsers(2 * limits.depth()) // bounds the parser's own work; the shape is checked after it
                .build();
    }
}
