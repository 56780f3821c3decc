package groupwright.definition.session;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.history.Conflict;
import groupwright.definition.history.EditName;
import groupwright.definition.history.History;
import groupwright.definition.history.Naming;
import groupwright.definition.history.Ripple;
import groupwright.definition.interchange.Loading;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * An open project: what is edited is saved at once, can be undone, and is joined with what others change in the folder.
 * Whatever happens to the folder, nothing that was edited is lost while the session is open.
 *
 * <p>Not thread-safe: the thread that opens it owns it and alone may call it. That should be a
 * {@link groupwright.definition.ledger.LedgerThread}, whose stack is deep enough for every project. Steps and standings are
 * immutable values for any thread.
 */
public final class Session implements AutoCloseable {
    /** How a conflict is decided. */
    public enum Choice {
        KEEP_OURS,
        TAKE_THEIRS
    }

    private final Thread owner = Thread.currentThread();
    private final Homes homes;
    private final Ledger ledger;
    private Home home;
    private Sides sides;
    private History history = History.EMPTY;
    private Set<Ask> shown = Set.of();
    private Map<Ask, Answer> answers;

    private Session(Homes homes, Home home, Catalogue catalogue) {
        this.homes = homes;
        this.home = home;
        this.sides = Sides.same(home.found().definition());
        this.ledger = new Ledger(catalogue, sides.present(), Ledger.DEEPEST);
        this.answers = Ripple.answers(ledger, watched());
    }

    /** Opens a project and answers all that is watched; for reading only where it cannot be written. */
    public static SessionOpening open(Path folder, Catalogue catalogue) {
        return open(folder, catalogue, new Homes(ProjectFiles::folder));
    }

    static SessionOpening open(Path folder, Catalogue catalogue, Homes homes) {
        Homes.Result result = homes.open(folder);
        if (result instanceof Homes.Result.Found found) {
            return new SessionOpening.Opened(new Session(homes, found.home(), catalogue), found.problems());
        }
        return new SessionOpening.NotOpened(((Homes.Result.None) result).problem());
    }

    private void requireOwner() {
        if (Thread.currentThread() != owner) {
            throw new IllegalStateException("a session belongs to the thread that opened it, " + owner.getName());
        }
    }

    /** Answers about the project as it is; good until the next step. */
    public View view() {
        requireOwner();
        return ledger;
    }

    /** The project as it is. */
    public Definition definition() {
        return sides.present();
    }

    /** How it stands; O(records whose files cannot be read + open conflicts). */
    public Standing standing() {
        requireOwner();
        return new Standing(
                history.last().map(History.Edit::name),
                history.next().map(History.Edit::name),
                home.saving(sides),
                home.problems(),
                sides.open(),
                home.path(),
                home.found().files());
    }

    /** All that is wrong now, in single files and between records; linear in the size of the project. */
    public List<Problem> problems() {
        requireOwner();
        List<Problem> problems = new ArrayList<>(home.problems());
        problems.addAll(Loading.consistency(definition(), home.broken()));
        return problems;
    }

    /** The next free id of a kind; one whose file cannot be read is not free. */
    public RecordId nextId(RecordKind<?> kind) {
        requireOwner();
        int free = definition().nextId(kind).number();
        for (RecordId id : home.broken()) {
            if (id.letters().equals(kind.letters())) {
                free = Math.max(free, id.number() + 1);
            }
        }
        return RecordId.of(kind.letters(), free);
    }

    /** What else is watched beside {@link Assessment#watched}, as the figures on the screen; in place of what was before. */
    public void watchAlso(Collection<Ask> asks) {
        requireOwner();
        shown = new LinkedHashSet<>(asks);
        answers = Ripple.answers(ledger, watched());
    }

    private Set<Ask> watched() {
        Set<Ask> watched = new LinkedHashSet<>(new Assessment(ledger).watched());
        watched.addAll(shown);
        return watched;
    }

    /**
     * Edits the project and saves it. An edit that changes nothing is no step in the history.
     *
     * @param label what the edit is to be called in place of the name found from its changes
     * @param edit gives the project after the edit
     * @throws Invalid if the edit is refused; then nothing changed
     */
    public Step edit(Optional<String> label, UnaryOperator<Definition> edit) {
        requireWritable();
        Definition before = definition();
        Definition after = edit.apply(before);
        EditName found = Naming.between(before, after);
        EditName name = label.map(found::called).orElse(found);
        if (found.act() == EditName.Act.NOTHING) {
            return stepped(Step.Kind.EDIT, name, sides, List.of());
        }
        requireFreeIds(before, after);
        requireKnownFormat(after);
        history = history.with(new History.Edit(name, before, after));
        return stepped(Step.Kind.EDIT, name, sides.moved(after), List.of());
    }

    private void requireWritable() {
        requireOwner();
        home.readOnly().ifPresent(why -> {
            String bare = why.endsWith(".") ? why.substring(0, why.length() - 1) : why;
            throw new Invalid("", "nothing was changed: " + bare, "open the project again when that is mended");
        });
    }

    /** A new record must not take the name of one whose file waits to be mended. */
    private void requireFreeIds(Definition before, Definition after) {
        for (RecordId id : home.broken()) {
            if (before.get(id).isEmpty() && after.get(id).isPresent()) {
                throw new Invalid("id", id + " has a file that cannot be read", "mend it or take the next number");
            }
        }
    }

    /** Else the next opening would be for reading only. */
    private static void requireKnownFormat(Definition after) {
        if (after.project().format() > Loading.FORMAT) {
            throw new Invalid("format", "is newer than this program knows", "leave it at " + Loading.FORMAT);
        }
    }

    /** Takes back what the last edit changed, and only that; nothing where there is nothing to undo. */
    public Optional<Step> undo() {
        requireOwner();
        return history.undo(definition()).map(moved -> moved(Step.Kind.UNDO, moved));
    }

    /** Does again what was undone last; nothing where there is nothing. */
    public Optional<Step> redo() {
        requireOwner();
        return history.redo(definition()).map(moved -> moved(Step.Kind.REDO, moved));
    }

    private Step moved(Step.Kind kind, History.Moved moved) {
        requireWritable();
        history = moved.history();
        return stepped(
                kind,
                moved.edit().name(),
                sides.moved(moved.merge().merged()),
                moved.merge().conflicts());
    }

    /** Tries again to save what could not be saved, and takes in what others changed. */
    public Step save() {
        requireOwner();
        return stepped(Step.Kind.SAVED, Naming.between(definition(), definition()), home.looked(sides), List.of());
    }

    /**
     * Looks whether others changed the folder, and takes that in. Where nothing changed it costs one listing of each record
     * folder, one look at each file's size and time, and reading those written in the last two seconds before the look
     * before; else reading the whole project. A file that others broke leaves its record as it is here.
     *
     * @return nothing where there is nothing to tell
     */
    public Optional<Step> lookOutside() {
        requireOwner();
        Standing before = standing();
        Definition was = definition();
        Sides joined = home.looked(sides);
        boolean news = joined != sides || !standing().isLike(before);
        if (!news) {
            return Optional.empty();
        }
        EditName name = Naming.between(was, joined.present());
        Step step = stepped(Step.Kind.OUTSIDE, name, joined, List.of());
        boolean quiet = step.ripple().changes().isEmpty() && step.standing().isLike(before);
        return quiet ? Optional.empty() : Optional.of(step);
    }

    /**
     * Decides an open conflict. Taking theirs is an edit that can be undone.
     *
     * @param conflict one of {@link Standing#conflicts}
     * @throws Invalid if it is no longer open as it was, or the record would break a rule; then nothing changed
     */
    public Step settle(Conflict conflict, Choice choice) {
        requireWritable();
        if (!sides.open().contains(conflict)) {
            throw new Invalid("", conflict.address() + " is not open like this any more", "look at it again");
        }
        if (choice == Choice.KEEP_OURS) {
            EditName nothing = Naming.between(definition(), definition());
            return stepped(Step.Kind.SETTLED, nothing, sides.oursKept(conflict), List.of());
        }
        Sides settled = sides.theirsTaken(conflict);
        EditName name = Naming.between(definition(), settled.present());
        history = history.with(new History.Edit(name, definition(), settled.present()));
        return stepped(Step.Kind.SETTLED, name, settled, List.of());
    }

    /**
     * Writes the whole project, unknown fields and other files included, to a new or empty folder and goes on there. Where
     * conflicts are open, ours go there; theirs stay in the old folder.
     *
     * @throws Invalid if that is not possible; then nothing changed
     */
    public Step saveElsewhere(Path folder) {
        requireOwner();
        if (home.found().files().access() == Loading.Access.READ_ONLY) {
            requireWritable();
        }
        Home next = homes.elsewhere(home, definition(), folder);
        Home old = home;
        home = next;
        try {
            old.close();
        } catch (IOException e) {
            next.caution(Optional.of("The lock of " + old.path() + " could not be released: " + e.getMessage() + "."));
        }
        return stepped(
                Step.Kind.SAVED, Naming.between(definition(), definition()), Sides.same(definition()), List.of());
    }

    /** Saves, moves the ledger, asks what is watched again, and tells all that. */
    private Step stepped(Step.Kind kind, EditName name, Sides next, List<Conflict> told) {
        Definition before = definition();
        List<Conflict> known = sides.open();
        sides = next; // what follows may fail, but the edit is not lost
        sides = home.saved(next);
        List<Conflict> conflicts = new ArrayList<>(told);
        sides.open().stream().filter(open -> !isKnown(open, known)).forEach(conflicts::add);
        long computations = ledger.computations();
        ledger.moveTo(definition());
        Map<Ask, Answer> were = answers;
        answers = Ripple.answers(ledger, watched());
        return new Step(
                kind,
                name,
                before,
                Ripple.between(before, were, definition(), answers),
                conflicts,
                standing(),
                ledger.computations() - computations);
    }

    private static boolean isKnown(Conflict conflict, List<Conflict> known) {
        return known.stream().anyMatch(open -> open.address().equals(conflict.address()));
    }

    /** Lets others edit the project. What could not be saved is lost: see {@link Standing#saving} before. */
    @Override
    public void close() throws IOException {
        requireOwner();
        home.close();
    }
}
