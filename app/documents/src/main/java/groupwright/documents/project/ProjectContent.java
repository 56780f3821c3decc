package groupwright.documents.project;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Project;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Content;
import groupwright.documents.content.Inline;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.content.Unanswered;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.documents.numbers.TargetText;
import groupwright.documents.trace.Trace;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Answers a template's questions from the ledger. */
public final class ProjectContent implements Content {
    private final View view;
    private final Sheet sheet;
    private final SortedMap<String, Block> blocks = new TreeMap<>();
    private final SortedMap<String, Function<Project, String>> words = new TreeMap<>();

    public ProjectContent(View view, Reader reader) {
        this.view = view;
        Labels labels = Labels.of(reader.locale());
        AnswerText text = new AnswerText(reader);
        this.sheet = new Sheet(
                view,
                new Assessment(view),
                new Traces(view, text, labels),
                text,
                reader,
                labels,
                new TargetText(reader, labels));
        Blocks.ALL.forEach(blocks::put);
        words.put("project.name", Project::name);
        words.put("project.company", Project::company);
        words.put("project.purpose", Project::purpose);
        words.put("project.currency", Project::currency);
        words.put("lead.id", any -> lead().map(c -> c.id().text()).orElse("—"));
        words.put("lead.title", any -> lead().map(Concept::title).orElse("—"));
        words.put("lead.description", any -> lead().map(Concept::description).orElse("—"));
    }

    private Optional<Concept> lead() {
        return sheet.assessment().lead().flatMap(id -> view.definition().get(id, Concept.class));
    }

    /** The questions of a trace all of whose entries came from here; entry {@code n} is at {@code n - 1}. */
    List<Ask> asks(Trace trace) {
        return trace.entries().stream()
                .map(numbered -> sheet.traces().ask(numbered.entry()))
                .toList();
    }

    @Override
    public TextAnswer text(String query) {
        Function<Project, String> word = words.get(query);
        if (word != null) {
            return TextAnswer.of(new Inline.Plain(word.apply(view.definition().project())));
        }
        try {
            Ask ask = FigureText.parse(query)
                    .resolve(view.catalogue(), view.definition().project().leadConcept());
            if (view.ask(ask) instanceof Verdict verdict) {
                return TextAnswer.of(new Inline.Judged(Marks.verdict(verdict)));
            }
            return TextAnswer.of(sheet.live(ask));
        } catch (Invalid invalid) {
            return new Unanswered(invalid.getMessage());
        }
    }

    @Override
    public BlockAnswer block(String name, String arguments) {
        try {
            return blocks.get(name).fill(sheet, arguments);
        } catch (Invalid invalid) {
            return new Unanswered(invalid.getMessage());
        }
    }

    @Override
    public SortedSet<String> names() {
        SortedSet<String> names = new TreeSet<>(words.keySet());
        view.catalogue().all().stream().map(Figure::id).forEach(names::add);
        return names;
    }

    @Override
    public SortedSet<String> blockNames() {
        return new TreeSet<>(blocks.keySet());
    }
}
