package groupwright.workbench.shell;

import groupwright.definition.history.Conflict;
import groupwright.definition.problem.Problem;
import groupwright.definition.session.Saving;
import groupwright.definition.session.Session;
import groupwright.definition.session.Standing;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.ProblemEntry;
import groupwright.workbench.components.Step;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.StackLayout;
import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.JPanel;

/** What is wrong now, above the place: files that cannot be read, what could not be saved, what waits for a decision. */
final class Problems extends JPanel {
    private static final int MOST_SHOWN = 3;

    /** What helps. */
    interface Ways {
        void saveAgain();

        void saveElsewhere();

        void readAgain();

        void settle(Conflict conflict, Session.Choice choice);
    }

    private final transient Words words;
    private final transient ConflictWords conflictWords;
    private final transient Ways ways;
    private final transient Map<String, Problem> told = new LinkedHashMap<>();
    private transient Standing standing;
    private boolean all;

    Problems(Words words, Ways ways) {
        super(new StackLayout(Metric.HALF_STEP.px()));
        this.words = words;
        this.conflictWords = new ConflictWords(words);
        this.ways = ways;
        setName("problems");
        setVisible(false);
        setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
    }

    /** Shows how the project stands. */
    void show(Standing next) {
        standing = next;
        refresh();
    }

    /** Shows a problem until it is closed; the same one is shown once. */
    void tell(Problem problem) {
        told.put(problem.sentence(), problem);
        refresh();
    }

    private void refresh() {
        List<ProblemEntry> entries = entries();
        removeAll();
        int shown = all ? entries.size() : Math.min(MOST_SHOWN, entries.size());
        entries.subList(0, shown).forEach(this::add);
        if (shown < entries.size()) {
            ActionLink more =
                    new ActionLink(words.text("problems.more", Integer.toString(entries.size() - shown)), () -> {
                        all = true;
                        refresh();
                    });
            more.setName("problems.more");
            add(more);
        }
        setVisible(!entries.isEmpty());
        revalidate();
        repaint();
    }

    private List<ProblemEntry> entries() {
        List<ProblemEntry> entries = new ArrayList<>();
        if (standing != null) {
            saving(entries);
            standing.conflicts().forEach(conflict -> entries.add(conflict(conflict)));
            standing.problems().forEach(problem -> entries.add(file(problem)));
        }
        told.values().forEach(problem -> entries.add(told(problem)));
        return entries;
    }

    private void saving(List<ProblemEntry> entries) {
        standing.saving().told().ifPresent(sentence -> {
            List<Step> help = new ArrayList<>();
            if (standing.saving() instanceof Saving.Unsaved) {
                help.add(new Step(words.text("problem.saveAgain"), ways::saveAgain));
                help.add(new Step(words.text("problem.saveElsewhere"), ways::saveElsewhere));
            }
            entries.add(entry("saving", sentence, standing.folder().toString(), help));
        });
    }

    private ProblemEntry conflict(Conflict conflict) {
        return entry(
                "conflict." + conflict.address(),
                conflictWords.sentence(conflict),
                conflict.address().toString(),
                List.of(
                        new Step(conflictWords.ours(conflict), () -> ways.settle(conflict, Session.Choice.KEEP_OURS)),
                        new Step(
                                conflictWords.theirs(conflict),
                                () -> ways.settle(conflict, Session.Choice.TAKE_THEIRS))));
    }

    private ProblemEntry file(Problem problem) {
        return entry(
                "file." + problem.file(),
                words.text("problem.left", problem.wrong()),
                where(problem),
                List.of(new Step(words.text("problem.readAgain"), ways::readAgain)));
    }

    private static String where(Problem problem) {
        String sentence = problem.sentence();
        int wrong = sentence.indexOf(problem.wrong());
        String place = wrong > 0 ? sentence.substring(0, wrong).replaceAll(":\\s*$", "") : problem.file();
        return problem.remedy().isEmpty() ? place : place + " · " + problem.remedy();
    }

    private ProblemEntry told(Problem problem) {
        return entry("told", problem.sentence(), "", List.of(new Step(words.text("problem.close"), () -> {
            told.remove(problem.sentence());
            refresh();
        })));
    }

    private ProblemEntry entry(String name, String sentence, String where, List<Step> help) {
        ProblemEntry entry = new ProblemEntry(sentence, where, help, words.locale());
        entry.setName("problem." + name);
        return entry;
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.SURFACE.colour();
    }
}
