package groupwright.workbench.documents;

import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.documents.pages.PaintedDocument;
import groupwright.documents.project.Obstacle;
import groupwright.documents.project.Preview;
import groupwright.documents.project.ProjectDocuments;
import groupwright.documents.trace.Use;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Words;
import groupwright.workbench.start.DocumentChoices;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** Documents: the list, the one chosen as it will print or as its template, and writing them. */
public final class DocumentsPlace implements Place {
    private final Bench bench;
    private final Supplier<Whereabouts> where;
    private final Clock clock;
    private final DocumentsKeeping keeping;
    private final Words words;
    private final DocumentsPanel panel;
    private final TemplateDesk templates;
    private final DocumentsReading reading = new DocumentsReading(); // touched on the ledger's thread only
    private final Map<String, DocumentsSheet> sheets = new HashMap<>();
    private final Map<String, WrittenNumbers.Texts> firstSeen = new HashMap<>();
    private Optional<WrittenNumbers> written = Optional.empty(); // until it is read
    private List<String> names = ProjectDocuments.names();
    private String chosen = names.get(0);

    /**
     * @param where where the project lies now
     * @param clock dates documents of a project that states none
     * @param keeping what outlives the window
     */
    public DocumentsPlace(Bench bench, Supplier<Whereabouts> where, Clock clock, DocumentsKeeping keeping) {
        this.bench = bench;
        this.where = where;
        this.clock = clock;
        this.keeping = keeping;
        this.words = Words.of(DocumentsPlace.class, bench.locale());
        this.panel = new DocumentsPanel(words, keeping.choices(), new Acts());
        this.templates = new TemplateDesk(bench, words, where, keeping, panel.template(), this::templatesChanged);
        panel.template().listen(templates);
    }

    @Override
    public PlaceName name() {
        return PlaceName.DOCUMENTS;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    private DocumentsReading.Wish wish() {
        return new DocumentsReading.Wish(where.get(), keeping.choices(), bench.locale(), LocalDate.now(clock));
    }

    private record Kept(WrittenNumbers written, Drafts drafts) {}

    @Override
    public List<Sheet> sheets() {
        DocumentsReading.Wish wish = wish();
        String first = chosen;
        Path folder = keeping.folder();
        boolean isKnown = written.isPresent();
        panel.calculating();
        List<Sheet> stages = new ArrayList<>();
        stages.add(view -> {
            List<String> found = wish.templates().names();
            Optional<Kept> kept = isKnown
                    ? Optional.empty()
                    : Optional.of(kept(folder, wish.where().folder()));
            DocumentsSheet sheet = reading.read(view, wish, first);
            return () -> {
                kept.ifPresent(this::take);
                show(sheet);
                named(found);
            };
        });
        names.stream()
                .filter(name -> !name.equals(first))
                .forEach(name -> stages.add(view -> {
                    DocumentsSheet sheet = reading.read(view, wish, name);
                    return () -> show(sheet);
                }));
        return stages;
    }

    private static Kept kept(Path folder, Path project) {
        return new Kept(WrittenNumbers.read(folder, project), Drafts.read(folder, project));
    }

    private void take(Kept kept) {
        if (written.isEmpty()) {
            written = Optional.of(kept.written());
            templates.take(kept.drafts());
        }
    }

    /** Others may have added templates or taken them away. */
    private void named(List<String> found) {
        if (!found.equals(names)) {
            names = found;
            if (!names.contains(chosen)) {
                chosen = names.get(0);
            }
            bench.refresh();
        }
    }

    private void show(DocumentsSheet sheet) {
        sheets.put(sheet.name(), sheet);
        sheet.numbers().ifPresent(now -> firstSeen.putIfAbsent(sheet.name(), now));
        list();
        if (sheet.name().equals(chosen)) {
            templates.show(sheet.name(), sheet.template(), obstacles(sheet));
            page(sheet);
        }
    }

    private static List<Obstacle> obstacles(DocumentsSheet sheet) {
        return sheet.preview() instanceof Preview.Refused refused ? refused.obstacles() : List.of();
    }

    private void list() {
        DocumentState state = new DocumentState(words);
        panel.show(names.stream()
                .map(name -> new DocumentsPanel.Row(
                        name,
                        Optional.ofNullable(sheets.get(name))
                                .map(sheet -> state.of(sheet, changed(sheet), standing(name), name.equals(chosen)))
                                .orElseGet(() -> state.waiting(name, name.equals(chosen)))))
                .toList());
    }

    private DocumentState.Standing standing(String name) {
        return new DocumentState.Standing(
                written.flatMap(kept -> kept.of(name)).isPresent(),
                templates.drafts().of(name).isPresent());
    }

    /** The questions whose answers are not those of the document written last, or as first seen. */
    private Set<String> changed(DocumentsSheet sheet) {
        Optional<WrittenNumbers.Texts> before = written.flatMap(kept -> kept.of(sheet.name()))
                .or(() -> Optional.ofNullable(firstSeen.get(sheet.name())));
        return sheet.numbers().flatMap(now -> before.map(now::changedSince)).orElse(Set.of());
    }

    private void page(DocumentsSheet sheet) {
        if (bench.definition().project().leadConcept().isEmpty()) {
            panel.refuse(sheet.title(), words.text("noLead.what"), List.of(Obstacles.plain(words.text("noLead.why"))));
        } else if (sheet.preview() instanceof Preview.Refused refused) {
            panel.refuse(sheet.title(), words.text("refused"), Obstacles.of(refused.obstacles()));
        } else if (sheet.preview() instanceof Preview.Ready ready) {
            panel.show(ready.document(), uses(ready.document(), changed(sheet)), sheet.title());
        }
    }

    private static Set<Use> uses(PaintedDocument document, Set<String> changed) {
        Set<Use> uses = new LinkedHashSet<>();
        document.trace().entries().stream()
                .filter(entry -> changed.contains(entry.entry().id()))
                .forEach(entry -> uses.addAll(entry.uses()));
        return uses;
    }

    /** A template was typed in, saved, added or put away. */
    private void templatesChanged(TemplateDesk.Changed what) {
        what.show().ifPresent(name -> chosen = name);
        list();
        if (what.onDisk()) {
            bench.refresh();
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
        list();
        Optional.ofNullable(sheets.get(name)).ifPresent(this::show);
        bench.refresh();
    }

    private final class Acts implements DocumentsPanel.Acts {
        @Override
        public void choose(String name) {
            DocumentsPlace.this.choose(name);
        }

        @Override
        public void choose(Use use) {
            Optional.ofNullable(sheets.get(chosen))
                    .map(DocumentsSheet::preview)
                    .filter(Preview.Ready.class::isInstance)
                    .map(Preview.Ready.class::cast)
                    .ifPresent(ready -> bench.select(ready.ask(use)));
        }

        @Override
        public void choose(DocumentChoices choices) {
            keeping.choose(choices);
            bench.refresh();
        }

        @Override
        public void add(String name) {
            templates.add(name, panel::addRefused);
        }

        @Override
        public void write() {
            DocumentsReading.Wish wish = wish();
            Path out = wish.where().out();
            bench.work(
                    new Writing(words, bench.definition(), wish, keeping.folder()), outcome -> written(out, outcome));
        }

        @Override
        public void open(Path folder) {
            bench.work(new OpeningFolder(words, folder), trouble -> trouble.ifPresent(DocumentsPlace.this::tell));
        }
    }

    private void tell(String sentence) {
        bench.tell(Problem.ofFile("", Obstacles.withoutStop(sentence), ""));
    }

    private void written(Path out, Writing.Outcome outcome) {
        outcome.problems().forEach(this::tell);
        if (!outcome.files().isEmpty()) {
            written = Optional.of(outcome.written());
            int files = outcome.files().size();
            panel.say(
                    words.text(files == 1 ? "written.one" : "written", Integer.toString(files), out.toString()),
                    Optional.of(out));
            list();
            bench.refresh();
        }
    }
}
