package groupwright.workbench.documents;

import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.documents.project.Format;
import groupwright.documents.project.Numbers;
import groupwright.documents.project.Preview;
import groupwright.documents.project.ProjectDocuments;
import groupwright.documents.trace.Use;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.components.Mark;
import groupwright.workbench.look.Words;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** Documents: the list, the one chosen as it will print, and writing them. */
public final class DocumentsPlace implements Place {
    private final Bench bench;
    private final Supplier<Whereabouts> where;
    private final Clock clock;
    private final Words words;
    private final DocumentsPanel panel;
    private final Map<String, Numbers.Read> compared = new HashMap<>(); // as first seen or last written
    private String chosen = ProjectDocuments.names().get(0);
    private Optional<DocumentsSheet> sheet = Optional.empty();
    private Optional<Preview.Ready> shown = Optional.empty();

    /**
     * @param where where the project lies now
     * @param clock dates documents of a project that states none
     */
    public DocumentsPlace(Bench bench, Supplier<Whereabouts> where, Clock clock) {
        this.bench = bench;
        this.where = where;
        this.clock = clock;
        this.words = Words.of(DocumentsPlace.class, bench.locale());
        this.panel = new DocumentsPanel(words, new Acts());
    }

    @Override
    public PlaceName name() {
        return PlaceName.DOCUMENTS;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public List<Sheet> sheets() {
        Whereabouts at = where.get();
        String name = chosen;
        LocalDate today = LocalDate.now(clock);
        panel.calculating();
        return List.of(
                view -> {
                    Preview preview = new DocumentsReading(view, at, bench.locale()).pages(name, today);
                    return () -> show(name, preview);
                },
                view -> {
                    DocumentsSheet read = new DocumentsReading(view, at, bench.locale()).all();
                    return () -> show(read);
                });
    }

    private void show(DocumentsSheet read) {
        sheet = Optional.of(read);
        read.rows().forEach(row -> row.numbers().ifPresent(now -> compared.putIfAbsent(row.name(), now)));
        panel.show(read.rows().stream().map(this::row).toList());
    }

    private DocumentsPanel.Row row(DocumentsSheet.Row row) {
        boolean selected = row.name().equals(chosen);
        if (row.numbers().isEmpty()) {
            return new DocumentsPanel.Row(
                    row.name(), new DocumentRow.Value(row.title(), row.problem(), Optional.of(Mark.MISSES), selected));
        }
        int changed = row.numbers().get().changedSince(compared.get(row.name())).size();
        String state = changed == 0
                ? words.text("state.same")
                : words.text(changed == 1 ? "state.one" : "state.changed", Integer.toString(changed));
        return new DocumentsPanel.Row(
                row.name(),
                new DocumentRow.Value(
                        row.title(), state, changed == 0 ? Optional.empty() : Optional.of(Mark.CHANGED), selected));
    }

    private Optional<Preview.Ready> baseline = Optional.empty();
    private String baselineOf = "";

    private void show(String name, Preview preview) {
        if (!name.equals(chosen)) {
            return;
        }
        if (bench.definition().project().leadConcept().isEmpty()) {
            shown = Optional.empty();
            panel.refuse(words.text("noLead.what"), List.of(words.text("noLead.why")));
        } else if (preview instanceof Preview.Refused refused) {
            shown = Optional.empty();
            panel.refuse(
                    words.text("refused"),
                    refused.obstacles().stream().map(o -> o.sentence()).toList());
        } else if (preview instanceof Preview.Ready ready) {
            if (!baselineOf.equals(name)) {
                baseline = Optional.of(ready);
                baselineOf = name;
            }
            Set<Use> changed =
                    ready.document().changedSince(baseline.orElseThrow().document());
            shown = Optional.of(ready);
            panel.show(ready.document(), changed, words.text("title." + name));
        }
    }

    @Override
    public int openThings(View view) {
        return 0;
    }

    @Override
    public void reveal(Address address) {
        // documents are no records
    }

    /** Shows a document. */
    public void choose(String name) {
        chosen = name;
        baselineOf = "";
        sheet.ifPresent(this::show);
        bench.refresh();
    }

    private final class Acts implements DocumentsPanel.Acts {
        @Override
        public void choose(String name) {
            DocumentsPlace.this.choose(name);
        }

        @Override
        public void choose(Use use) {
            shown.ifPresent(ready -> bench.select(ready.ask(use)));
        }

        @Override
        public void write(Set<Format> formats) {
            Whereabouts at = where.get();
            Writing writing = new Writing(words, bench.definition(), at, bench.locale(), LocalDate.now(clock), formats);
            bench.work(writing, outcome -> written(at.out(), outcome));
        }
    }

    private void written(Path out, Writing.Outcome outcome) {
        outcome.problems().forEach(sentence -> bench.tell(Problem.ofFile("", plain(sentence), "")));
        if (!outcome.files().isEmpty()) {
            sheet.ifPresent(read ->
                    read.rows().forEach(row -> row.numbers().ifPresent(now -> compared.put(row.name(), now))));
            baseline = shown;
            baselineOf = shown.isPresent() ? chosen : "";
            panel.say(words.text("written", Integer.toString(outcome.files().size()), out.toString()));
            bench.refresh();
        }
    }

    private static String plain(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
