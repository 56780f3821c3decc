package groupwright.workbench.shell;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.history.Conflict;
import groupwright.definition.history.EditName;
import groupwright.definition.history.FieldChange;
import groupwright.definition.ledger.LedgerThread;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.session.Session;
import groupwright.definition.session.Standing;
import groupwright.definition.session.Step;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.bench.Stage;
import groupwright.workbench.documents.DocumentNumbers;
import groupwright.workbench.documents.DocumentsKeeping;
import groupwright.workbench.documents.DocumentsPlace;
import groupwright.workbench.documents.Whereabouts;
import groupwright.workbench.find.FindField;
import groupwright.workbench.find.FindIndex;
import groupwright.workbench.find.Found;
import groupwright.workbench.look.Words;
import groupwright.workbench.ripple.RipplePanel;
import groupwright.workbench.workings.PageLinks;
import groupwright.workbench.workings.WorkingsPanel;
import groupwright.workbench.workings.WorkingsReading;
import groupwright.workbench.workings.WorkingsSheet;
import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** One open project in the window: takes what the user does to the desk, and shows what comes back. Event thread only. */
public final class Shell implements Bench {
    /** What the shell asks of the window around it. */
    interface Host {
        /** Asks for a folder and saves the project there. */
        void saveElsewhere();

        /** What the place of documents keeps outside the project. */
        DocumentsKeeping documents();

        /** The title of the window follows the project. */
        void titled(String title);
    }

    private final Locale locale;
    private final Words words;
    private final Desk desk;
    private final Catalogue catalogue;
    private final Host host;
    private final Map<PlaceName, Place> places = new EnumMap<>(PlaceName.class);
    private final Rail rail;
    private final TopBar bar;
    private final Problems problems;
    private final WorkingsPanel workings;
    private final RipplePanel ripple;
    private final WorkBench work;
    private final Content content;
    private final Trail trail = new Trail();
    private final FindField find;
    private FindIndex index;
    private Definition definition;
    private Standing standing;
    private RecentStep recent = RecentStep.NONE;
    private Optional<DocumentNumbers> documents = Optional.empty();
    private Set<Ask> watched = Set.of();
    private Optional<SettingsDialog> settings = Optional.empty();
    private Place inSight;
    private volatile long generation; // read by the ledger's thread to skip what nobody wants any more

    /**
     * A shell over an open project.
     *
     * @param thread the ledger's, on which the session was opened
     * @param opened the project as it was opened
     */
    Shell(LedgerThread thread, Opened opened, Locale locale, Host host) {
        this.locale = locale;
        this.words = Words.of(Shell.class, locale);
        this.host = host;
        this.definition = opened.definition();
        this.standing = opened.standing();
        this.index = opened.index();
        this.catalogue = opened.catalogue();
        this.desk = new Desk(thread, opened.session(), EventQueue::invokeLater, locale, new Arrivals());
        this.find = new FindField(locale, (query, most) -> index.find(query, most), this::go);
        this.rail = new Rail(words, this::go);
        this.bar = new TopBar(words, find, new Acts());
        this.problems = new Problems(words, new Help());
        this.workings = new WorkingsPanel(locale, this::select, this::open, this::openDocument);
        this.ripple = new RipplePanel(locale, this::open, this::select, this::undo, () -> go(PlaceName.DOCUMENTS));
        this.work = new WorkBench(words, EventQueue::invokeLater, this::broken);
        this.content = new Content(words, bar, rail, problems, work, workings, ripple);
        for (Place place : Places.all(
                this,
                opened.catalogue(),
                () -> new Whereabouts(standing.folder(), standing.files()),
                host.documents(),
                new Roads())) {
            places.put(place.name(), place);
        }
        Map<PlaceName, Integer> nothingOpen = new EnumMap<>(PlaceName.class);
        places.keySet().forEach(place -> nothingOpen.put(place, 0));
        rail.show(new RailSheet(nothingOpen, Optional.empty()));
        bar.show(definition);
        showStanding();
        opened.problems().stream()
                .filter(problem -> !standing.problems().contains(problem))
                .forEach(problems::tell);
        ripple.say(words.text("opened", definition.project().name()));
        titled();
        go(
                places.containsKey(PlaceName.REQUIREMENTS) && definition.count(RecordKinds.REQUIREMENT) > 0
                        ? PlaceName.REQUIREMENTS
                        : places.keySet().iterator().next());
        readRail();
        readDocuments();
        new Keys(this, content).install();
    }

    /**
     * A project as it was opened, made on the ledger's thread.
     *
     * @param problems all that is wrong with it
     */
    record Opened(
            Session session,
            Definition definition,
            Catalogue catalogue,
            Standing standing,
            FindIndex index,
            List<Problem> problems) {
        static Opened of(Session session, List<Problem> problems) {
            return new Opened(
                    session,
                    session.definition(),
                    session.view().catalogue(),
                    session.standing(),
                    FindIndex.of(session.definition(), session.view().catalogue()),
                    problems);
        }
    }

    Content content() {
        return content;
    }

    Desk desk() {
        return desk;
    }

    Standing standing() {
        return standing;
    }

    Rail rail() {
        return rail;
    }

    RipplePanel ripple() {
        return ripple;
    }

    WorkingsPanel workings() {
        return workings;
    }

    FindField find() {
        return find;
    }

    /** The place in sight. */
    Place place() {
        return inSight;
    }

    /** A place that works. */
    Optional<Place> place(PlaceName name) {
        return Optional.ofNullable(places.get(name));
    }

    /** Lets another shell go on with the project. */
    void handedOver() {
        settings.ifPresent(SettingsDialog::close);
        work.end();
        desk.leave();
    }

    /** Ends all work; the project must have been closed before. */
    void end() {
        settings.ifPresent(SettingsDialog::close);
        work.end();
        desk.end();
    }

    // What places ask

    @Override
    public Locale locale() {
        return locale;
    }

    @Override
    public Definition definition() {
        return definition;
    }

    @Override
    public Recent recent() {
        return recent;
    }

    @Override
    public void edit(Optional<String> name, UnaryOperator<Definition> edit, Consumer<Invalid> refused) {
        desk.edit(name, edit, refused);
    }

    @Override
    public <T> void ask(Function<View, T> question, Consumer<T> answer) {
        desk.ask(question, answer);
    }

    @Override
    public <T> void work(Work<T> piece, Consumer<T> done) {
        work.start(piece, done);
    }

    @Override
    public void refresh() {
        generation++;
        readPlace();
    }

    @Override
    public void select(Ask ask) {
        trail.visit(ask);
        readWorkings();
        refresh(); // the selected chip stands elsewhere now
    }

    @Override
    public Optional<Ask> selected() {
        return trail.here();
    }

    /** Goes back or forward among the figures that were selected. */
    void walk(int by) {
        if (trail.walk(by)) {
            readWorkings();
            refresh();
        }
    }

    @Override
    public void open(Address address) {
        Optional<Place> place = PlaceName.of(address.record()).flatMap(name -> Optional.ofNullable(places.get(name)));
        if (place.isEmpty()) { // only the project itself has no place
            openSettings(address);
            return;
        }
        go(place.get().name());
        place.get().reveal(address);
    }

    /** Shows the settings of the project. */
    void openSettings(Address address) {
        if (settings.isEmpty()) {
            settings = Optional.of(new SettingsDialog(this, catalogue, words));
        }
        settings.get().show(content, address);
    }

    /** The ways between places. */
    private final class Roads implements Places.Ways {
        @Override
        public void goTo(PlaceName place) {
            go(place);
        }

        @Override
        public void openDocument(String name) {
            Shell.this.openDocument(name);
        }
    }

    private void openDocument(String name) {
        go(PlaceName.DOCUMENTS);
        if (inSight instanceof DocumentsPlace place) {
            place.choose(name);
        }
    }

    @Override
    public void tell(Problem problem) {
        problems.tell(problem);
    }

    // What the user does

    void undo() {
        desk.undo();
    }

    void redo() {
        desk.redo();
    }

    /** Makes a concept the lead; an edit like any other. */
    void lead(RecordId concept) {
        desk.edit(
                Optional.empty(),
                project -> project.with(Address.of(RecordId.PROJECT, "leadConcept"), Optional.of(concept)),
                this::refused);
    }

    /** Goes where another shell was. */
    void goOnLike(Shell other) {
        recent = other.recent;
        other.ripple
                .sheet()
                .ifPresent(sheet -> ripple.show(sheet, standing.undo().isPresent()));
        other.selected().ifPresent(this::select);
        go(other.place().name());
    }

    /** Goes to a place. */
    void go(PlaceName name) {
        Place place = places.get(name);
        if (place != inSight) {
            boolean inside = inSight != null && new FocusKeeper(inSight.component()).isInside();
            inSight = place;
            content.show(place.component());
            if (inside) { // what had the focus is out of sight now
                rail.stand(name);
                rail.enter();
            }
        }
        rail.stand(name);
        refresh();
    }

    /** Goes to a stage; where one is there already, to its next place. */
    void go(Stage stage) {
        List<PlaceName> there = rail.places(stage);
        if (!there.isEmpty()) {
            int at = there.indexOf(inSight.name());
            go(there.get((at + 1) % there.size()));
        }
    }

    private void go(Found found) {
        if (found instanceof Found.OfRecord record) {
            open(record.address());
        } else if (found instanceof Found.OfFigure figure) {
            select(figure.ask());
            if (content.isFolded()) {
                content.toggleWorkings();
            }
        }
    }

    private final class Acts implements TopBar.Acts {
        @Override
        public void lead(RecordId concept) {
            Shell.this.lead(concept);
        }

        @Override
        public void undo() {
            desk.undo();
        }

        @Override
        public void redo() {
            desk.redo();
        }
    }

    private final class Help implements Problems.Ways {
        @Override
        public void saveAgain() {
            desk.save();
        }

        @Override
        public void saveElsewhere() {
            host.saveElsewhere();
        }

        @Override
        public void readAgain() {
            desk.lookOutside();
        }

        @Override
        public void settle(Conflict conflict, Session.Choice choice) {
            desk.settle(conflict, choice);
        }
    }

    // What comes back

    private final class Arrivals implements Desk.Listener {
        @Override
        public void stepped(Desk.Arrived arrived) {
            Shell.this.stepped(arrived);
        }

        @Override
        public void refused(Invalid why) {
            Shell.this.refused(why);
        }

        @Override
        public void broken(Throwable mistake) {
            Shell.this.broken(mistake);
        }
    }

    private void refused(Invalid why) {
        problems.tell(new Problem("", 0, 0, "", why.field(), why.wrong(), why.remedy()));
    }

    private void broken(Throwable mistake) {
        String what = mistake.getMessage() == null
                ? mistake.getClass().getSimpleName()
                : mistake.getClass().getSimpleName() + ", " + mistake.getMessage();
        problems.tell(Problem.ofFile("", words.text("broken", what), words.text("broken.remedy")));
    }

    private void stepped(Desk.Arrived arrived) {
        Step step = arrived.step();
        generation++;
        definition = arrived.after();
        standing = step.standing();
        if (!step.ripple().changes().isEmpty()) {
            recent = RecentStep.of(step.ripple());
            FocusKeeper below = new FocusKeeper(ripple);
            ripple.show(arrived.ripple(), standing.undo().isPresent());
            below.restoreOr(rail::enter);
            rail.touched(touched(step));
        } else if (step.kind() == Step.Kind.SAVED) {
            ripple.say(words.text("saved", standing.folder().toString()));
        }
        FocusKeeper focus = new FocusKeeper(bar);
        bar.show(definition);
        showStanding();
        focus.restoreOr(rail::enter);
        titled();
        step.conflicts().stream()
                .filter(conflict -> !standing.conflicts().contains(conflict))
                .forEach(conflict -> problems.tell(Problem.ofFile("", new ConflictWords(words).left(conflict), "")));
        readPlace();
        readWorkings();
        readRail();
        settings.ifPresent(SettingsDialog::refresh);
        desk.ask(view -> FindIndex.of(view.definition(), view.catalogue()), made -> index = made);
        readDocuments();
    }

    /** Makes all documents without their pages, last of all because it takes longest. */
    private void readDocuments() {
        long asked = generation;
        Whereabouts where = new Whereabouts(standing.folder(), standing.files());
        desk.ask(
                view -> asked == generation || documents.isEmpty()
                        ? Optional.of(DocumentNumbers.read(view, where, locale))
                        : Optional.<DocumentNumbers>empty(),
                read -> read.ifPresent(this::documentsRead));
    }

    private void documentsRead(DocumentNumbers read) {
        documents.map(read::changedSince).filter(changed -> !changed.isEmpty()).ifPresent(changed -> {
            ripple.showDocuments(changed.size(), changed.get(0).title());
            rail.touched(EnumSet.of(PlaceName.DOCUMENTS));
        });
        documents = Optional.of(read);
        Set<Ask> shown = read.figures();
        if (!shown.equals(watched)) {
            watched = shown;
            desk.watchAlso(shown);
        }
        readWorkings();
    }

    private Set<PlaceName> touched(Step step) {
        Set<PlaceName> touched = EnumSet.noneOf(PlaceName.class);
        for (FieldChange change : step.ripple().changes()) {
            PlaceName.of(change.address().record()).ifPresent(touched::add);
        }
        step.ripple()
                .effects()
                .forEach(effect -> effect.ask().subject().ids().stream()
                        .filter(id -> !id.hasLetters("C"))
                        .flatMap(id -> PlaceName.of(id).stream())
                        .forEach(touched::add));
        if (step.ripple().effects().stream()
                .anyMatch(effect -> effect.ask().figure().id().equals("verdict"))) {
            touched.add(PlaceName.CONCEPTS);
        }
        touched.retainAll(places.keySet());
        return touched;
    }

    private void showStanding() {
        AnswerText text = new AnswerText(new Reader(locale));
        bar.show(standing.undo().map(name -> shown(name, text)), standing.redo().map(name -> shown(name, text)));
        problems.show(standing);
    }

    private static String shown(EditName name, AnswerText text) {
        return name.text(value -> text.input(value, "").text());
    }

    private void titled() {
        host.titled(words.text("title", definition.project().name()));
    }

    /** Reads the sheets of the place in sight, one task each, so that an edit does not wait for all of them. */
    private void readPlace() {
        long asked = generation;
        for (Place.Sheet sheet : new ArrayList<>(inSight.sheets())) {
            desk.ask(
                    view -> asked == generation ? Optional.of(sheet.read(view)) : Optional.<Runnable>empty(),
                    show -> show.filter(any -> asked == generation).ifPresent(this::showKeepingFocus));
        }
    }

    private void showKeepingFocus(Runnable show) {
        FocusKeeper focus = new FocusKeeper(inSight.component());
        show.run();
        focus.restore();
    }

    private void readWorkings() {
        Optional<Ask> ask = trail.here();
        if (ask.isEmpty()) {
            workings.showNothing();
            return;
        }
        RecentStep changed = recent;
        desk.ask(
                view -> new WorkingsAnswer(new WorkingsReading(view, changed, locale).of(ask.get()), view.definition()),
                answer -> {
                    if (trail.here().equals(ask)) {
                        workings.show(answer.sheet().onPages(pages(ask.get())), answer.definition());
                    }
                });
    }

    private List<WorkingsSheet.Link> pages(Ask ask) {
        if (documents.isEmpty()) {
            return PageLinks.looking(locale);
        }
        Map<String, String> titles = new LinkedHashMap<>();
        documents.get().with(ask).forEach(document -> titles.put(document.name(), document.title()));
        return PageLinks.of(titles, locale);
    }

    private record WorkingsAnswer(WorkingsSheet sheet, Definition definition) {}

    private void readRail() {
        List<Place> working = List.copyOf(places.values());
        desk.ask(
                view -> {
                    Map<PlaceName, Integer> open = new EnumMap<>(PlaceName.class);
                    working.forEach(place -> open.put(place.name(), place.openThings(view)));
                    Assessment assessment = new Assessment(view);
                    return new RailSheet(
                            open, assessment.lead().map(lead -> new RailSheet.Ladder(assessment.coverage(lead))));
                },
                rail::show);
    }
}
