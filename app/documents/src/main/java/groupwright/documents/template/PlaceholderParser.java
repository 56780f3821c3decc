package groupwright.documents.template;

import java.util.Set;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/**
 * Recognises double braces while Markdown is parsed, so that stars and underscores between them are no emphasis and a
 * backslash before them keeps them as they are. It only marks the place; nothing is filled in before parsing is over.
 */
final class PlaceholderParser implements InlineContentParser {
    @Override
    public ParsedInline tryParse(InlineParserState state) {
        Scanner scanner = state.scanner();
        scanner.next();
        if (!scanner.next('{')) {
            return ParsedInline.none();
        }
        Position start = scanner.position();
        while (scanner.hasNext() && scanner.peek() != '\n') {
            Position end = scanner.position();
            if (scanner.next("}}")) {
                String query = scanner.getSource(start, end).getContent().strip();
                return ParsedInline.of(new Placeholder(query, Placeholder.Form.WHOLE), scanner.position());
            }
            scanner.next();
        }
        // the rest of the line goes with it: looking at it again from each brace would take quadratic time
        return ParsedInline.of(new Placeholder("", Placeholder.Form.NOT_CLOSED), scanner.position());
    }

    /** Registers the parser. */
    static final class Factory implements InlineContentParserFactory {
        @Override
        public Set<Character> getTriggerCharacters() {
            return Set.of('{');
        }

        @Override
        public InlineContentParser create() {
            return new PlaceholderParser();
        }
    }
}
