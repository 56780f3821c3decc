package groupwright.documents.project;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Content;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.content.Unanswered;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.documents.numbers.TargetText;
import groupwright.documents.trace.Trace;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Answers a template's questions from the ledger. */
public final class ProjectContent implements Content {
    private static final String EACH = "each";
    private static final String IF = "if";

    private final View view;
    private final Sheet sheet;
    private final ProjectWords words;
    private final Variables variables;
    private final SortedMap<String, Block> blocks;
    private final SortedSet<String> names;
    private final SortedSet<String> blockNames;

    public ProjectContent(View view, Reader reader) {
        this(view, reader, BikeChoice.ALL);
    }

    /** Answers that list and go through chosen bikes only. */
    public ProjectContent(View view, Reader reader, BikeChoice bikes) {
        this.view = view;
        this.blocks = new TreeMap<>();
        Labels labels = Labels.of(reader.locale());
        AnswerText text = new AnswerText(reader);
        this.sheet = new Sheet(
                view,
                new Assessment(view),
                new Traces(view, text, labels),
                text,
                reader,
                labels,
                new TargetText(reader, labels),
                bikes);
        this.words = new ProjectWords(sheet);
        this.variables = Variables.NONE;
        Blocks.ALL.forEach(block -> blocks.put(block.name(), block.block()));
        names = new TreeSet<>(words.all());
        view.catalogue().all().stream().map(Figure::id).forEach(names::add);
        for (String kind : Kinds.words()) {
            names.add(kind);
            RecordFields.of(Kinds.of(kind)).keySet().forEach(field -> names.add(kind + "." + field));
        }
        blockNames = new TreeSet<>(blocks.keySet());
        blockNames.addAll(List.of(EACH, IF));
    }

    /** The same inside a loop, which gives one more word a record. */
    private ProjectContent(ProjectContent outer, Variables variables) {
        this.view = outer.view;
        this.sheet = outer.sheet;
        this.words = outer.words;
        this.blocks = outer.blocks;
        this.names = outer.names;
        this.blockNames = outer.blockNames;
        this.variables = variables;
    }

    /** The words about project and lead concept. */
    SortedSet<String> words() {
        return words.all();
    }

    /** The questions of a trace all of whose entries came from here; entry {@code n} is at {@code n - 1}. */
    List<Ask> asks(Trace trace) {
        return trace.entries().stream()
                .map(numbered -> sheet.traces().ask(numbered.entry()))
                .toList();
    }

    @Override
    public TextAnswer text(String query) {
        try {
            String[] parts = query.split("\\s+", 2);
            boolean isWord = words.contains(parts[0]);
            if (!isWord && !Kinds.contains(parts[0].split("\\.")[0])) {
                return figure(FigurePlaceholder.parse(query));
            } else if (parts.length > 1) {
                throw new Invalid("", parts[0] + " takes nothing behind it", "leave \"" + parts[1] + "\" out");
            } else if (isWord) {
                String value = words.value(query);
                return TextAnswer.of(new Inline.Plain(value.isBlank() ? FieldText.NOTHING : value));
            }
            return field(query);
        } catch (Invalid invalid) {
            return new Unanswered(invalid.getMessage());
        }
    }

    private TextAnswer figure(FigurePlaceholder placeholder) {
        String question = variables.resolve(placeholder.question());
        boolean aboutLead = FigureText.parse(question).lead() == FigureText.Lead.NAMED;
        if (aboutLead && sheet.assessment().lead().isEmpty()) {
            return TextAnswer.of(new Inline.Plain(sheet.labels().text("value.noLead")));
        }
        Ask ask = sheet.ask(question);
        Answer answer = view.ask(ask);
        if (placeholder.shown().isUsual() || answer instanceof Missing) {
            return TextAnswer.of(
                    answer instanceof Verdict verdict ? new Inline.Judged(Marks.verdict(verdict)) : sheet.live(ask));
        } else if (answer instanceof Quantity quantity) {
            return TextAnswer.of(new Inline.Live(
                    placeholder.shown().of(ask.figure(), quantity, sheet.reader()),
                    sheet.traces().entry(ask)));
        }
        throw new Invalid("", ask.figure().id() + " gives no single number", "leave unit= and decimals= out");
    }

    /** A field of the record that a loop's word stands for; the word alone is the record's id. */
    private TextAnswer field(String name) {
        int dot = name.indexOf('.');
        Entry record = variables.need(dot < 0 ? name : name.substring(0, dot));
        if (dot < 0) {
            return TextAnswer.of(new Inline.Plain(record.id().text()));
        } else if (record instanceof Claim claim && name.equals("claim.wording")) {
            return new TextAnswer.Given(ClaimBlocks.wording(sheet, claim));
        }
        String field = name.substring(dot + 1);
        return TextAnswer.of(new Inline.Plain(new FieldText(sheet)
                .shown(RecordFields.component(name.substring(0, dot), field), RecordFields.value(record, field))));
    }

    @Override
    public BlockAnswer block(String name, String arguments) {
        try {
            return switch (name) {
                case EACH -> each(Selection.parse(arguments, sheet, variables));
                case IF ->
                    new BlockAnswer.Chosen(
                            new Condition(sheet, words, variables).holds(arguments)
                                    ? Optional.of(this)
                                    : Optional.empty());
                default -> blocks.get(name).fill(sheet, variables.resolve(arguments));
            };
        } catch (Invalid invalid) {
            return new Unanswered(invalid.getMessage());
        } catch (Sheet.NoLead none) {
            return new BlockAnswer.Paragraph(Phrase.of(sheet.labels().text("nothing.noLead")));
        }
    }

    private BlockAnswer each(Selection selection) {
        if (variables.get(selection.word()).isPresent()) {
            throw new Invalid(
                    "",
                    "\"each " + selection.word()
                            + "\" stands inside another one, and the word can stand for one record only",
                    "go through another kind here");
        }
        return new BlockAnswer.Repeated(selection.records(sheet).stream()
                .<Content>map(record -> new ProjectContent(this, variables.with(selection.word(), record)))
                .toList());
    }

    @Override
    public SortedSet<String> names() {
        return Collections.unmodifiableSortedSet(names);
    }

    @Override
    public SortedSet<String> blockNames() {
        return Collections.unmodifiableSortedSet(blockNames);
    }
}
