package groupwright.workbench.documents;

import groupwright.definition.problem.Problem;
import groupwright.documents.project.Obstacle;
import groupwright.documents.project.ProjectTemplates;
import groupwright.documents.project.ProjectTemplates.Owner;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.documents.Drafts.Draft;
import groupwright.workbench.look.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Takes what is typed into a template: keeps it as a draft at once, saves it when asked, and notices when the file became
 * another meanwhile. Event thread; files are touched on the ledger's thread, before the templates are read there again.
 */
final class TemplateDesk implements TemplatePane.Acts {
    private final Bench bench;
    private final Words words;
    private final Supplier<Whereabouts> where;
    private final DocumentsKeeping keeping;
    private final TemplatePane pane;
    private final Consumer<Changed> changed;
    private final AtomicReference<Drafts> toKeep = new AtomicReference<>(); // null while nothing waits to be written
    private Drafts drafts = Drafts.NONE;
    private Optional<Shown> shown = Optional.empty();

    /**
     * What has become of templates.
     *
     * @param onDisk whether files did
     * @param show the document to be shown now
     */
    record Changed(boolean onDisk, Optional<String> show) {}

    private record Shown(String name, ProjectTemplates.Found found, List<Obstacle> obstacles) {
        Optional<String> onDisk() {
            return found.owner() == Owner.PROJECT ? found.text() : Optional.empty();
        }
    }

    TemplateDesk(
            Bench bench,
            Words words,
            Supplier<Whereabouts> where,
            DocumentsKeeping keeping,
            TemplatePane pane,
            Consumer<Changed> changed) {
        this.bench = bench;
        this.words = words;
        this.where = where;
        this.keeping = keeping;
        this.pane = pane;
        this.changed = changed;
    }

    Drafts drafts() {
        return drafts;
    }

    /** Goes on with what was typed before the last close. */
    void take(Drafts kept) {
        drafts = kept;
    }

    /** Shows a template as it was read from disk, with what was typed since. */
    void show(String name, ProjectTemplates.Found found, List<Obstacle> obstacles) {
        Shown next = new Shown(name, found, obstacles);
        shown = Optional.of(next);
        if (drafts.of(name).map(Draft::text).equals(next.onDisk())
                && drafts.of(name).isPresent()) {
            drop(name);
        }
        pane.show(sheet(next));
    }

    private TemplateSheet sheet(Shown of) {
        Optional<Draft> draft = drafts.of(of.name());
        String text = draft.map(Draft::text).or(of.found()::text).orElse("");
        return new TemplateSheet(
                of.name(), text, standing(of, draft), of.found().problem(), of.obstacles());
    }

    private static TemplateSheet.Standing standing(Shown of, Optional<Draft> draft) {
        if (draft.isPresent()) {
            return of.onDisk().equals(draft.map(Draft::base))
                    ? TemplateSheet.Standing.UNSAVED
                    : TemplateSheet.Standing.CHANGED_ON_DISK;
        } else if (of.found().text().isEmpty()) {
            return TemplateSheet.Standing.UNREADABLE;
        } else if (of.found().owner() == Owner.PROGRAM) {
            return TemplateSheet.Standing.PROGRAMS;
        }
        return ProjectTemplates.isProgramsToo(of.name()) ? TemplateSheet.Standing.COPY : TemplateSheet.Standing.OWN;
    }

    @Override
    public void typed(String text) {
        shown.ifPresent(now -> {
            String base = drafts.of(now.name()).map(Draft::base).or(now::onDisk).orElse("");
            if (now.onDisk().equals(Optional.of(text))) {
                drop(now.name());
            } else {
                drafts = drafts.with(now.name(), new Draft(base, text));
                keep();
            }
            pane.show(sheet(now));
            changed.accept(new Changed(false, Optional.empty()));
        });
    }

    private void drop(String name) {
        drafts = drafts.without(name);
        keep();
    }

    /** Each change queues at most one writing of the latest texts, so that the queue of a closing window ends with it. */
    private void keep() {
        Path folder = keeping.folder();
        Path project = where.get().folder();
        if (toKeep.getAndSet(drafts) == null) {
            bench.ask(
                    view -> {
                        try {
                            toKeep.getAndSet(null).write(folder, project);
                            return Optional.<String>empty();
                        } catch (IOException trouble) {
                            return Optional.of(words.text(
                                    "keep.trouble", folder.toString(), String.valueOf(trouble.getMessage())));
                        }
                    },
                    trouble -> trouble.ifPresent(this::tell));
        }
    }

    @Override
    public void save() {
        shown.flatMap(now -> drafts.of(now.name())).ifPresent(draft -> save(Optional.of(draft.base())));
    }

    @Override
    public void keepMine() {
        shown.ifPresent(now -> save(now.onDisk()));
    }

    private void save(Optional<String> expected) {
        String name = shown.orElseThrow().name();
        String text = drafts.of(name).map(Draft::text).orElse("");
        change(own -> own.save(name, expected, text), done -> {
            drafts = drafts.of(name).filter(now -> !now.text().equals(text)).isPresent()
                    ? drafts.with(
                            name, new Draft(text, drafts.of(name).orElseThrow().text()))
                    : drafts.without(name);
            keep();
            changed.accept(new Changed(true, Optional.empty()));
        });
    }

    @Override
    public void loadAgain() {
        shown.ifPresent(now -> {
            drop(now.name());
            pane.show(sheet(now));
            changed.accept(new Changed(true, Optional.empty()));
        });
    }

    @Override
    public void copy() {
        String name = shown.orElseThrow().name();
        change(own -> own.copy(name), done -> changed.accept(new Changed(true, Optional.empty())));
    }

    @Override
    public void putAway() {
        String name = shown.orElseThrow().name();
        change(own -> own.putAway(name), away -> {
            pane.say(words.text("back.done", "templates/" + away.getFileName()));
            changed.accept(new Changed(true, Optional.empty()));
        });
    }

    /**
     * Starts a template.
     *
     * @param answered is told why there is none, or nothing once it is there
     */
    void add(String name, Consumer<Optional<String>> answered) {
        OwnTemplates own = own();
        bench.ask(view -> own.add(name), outcome -> {
            if (outcome instanceof OwnTemplates.Outcome.Refused refused) {
                answered.accept(Optional.of(refused.sentence()));
            } else {
                answered.accept(Optional.empty());
                changed.accept(new Changed(true, Optional.of(name)));
            }
        });
    }

    private OwnTemplates own() {
        return new OwnTemplates(new ProjectTemplates(where.get().folder()), words);
    }

    private void change(Function<OwnTemplates, OwnTemplates.Outcome> change, Consumer<Path> done) {
        OwnTemplates own = own();
        bench.ask(view -> change.apply(own), outcome -> {
            if (outcome instanceof OwnTemplates.Outcome.Done made) {
                done.accept(made.file());
            } else if (outcome instanceof OwnTemplates.Outcome.Refused refused) {
                tell(refused.sentence());
            } else {
                changed.accept(new Changed(true, Optional.empty())); // reading it again shows the choice
            }
        });
    }

    private void tell(String sentence) {
        bench.tell(Problem.ofFile("", Obstacles.withoutStop(sentence), ""));
    }
}
