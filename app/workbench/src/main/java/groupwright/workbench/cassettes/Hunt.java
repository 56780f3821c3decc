package groupwright.workbench.cassettes;

import groupwright.definition.cassettes.CassetteJudge;
import groupwright.definition.cassettes.Judged;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.record.Definition;
import groupwright.drivetrain.search.BestSet;
import groupwright.drivetrain.search.Cancelled;
import groupwright.drivetrain.search.CassetteSearch;
import groupwright.drivetrain.search.Contradiction;
import groupwright.drivetrain.search.Progress;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Finds cassettes, or judges those that were found. Of values alone; on the thread of long work, never on the event thread.
 */
final class Hunt implements Bench.Work<Hunt.Outcome> {
    private static final int DEEPEST = 500;

    /** How a hunt ended. */
    sealed interface Outcome {
        /** With cassettes, perhaps none; where judging was stopped, those judged by then are. */
        record Ready(Finding finding) implements Outcome {}

        /** It was stopped before anything was found, or a newer one came. */
        record Stopped() implements Outcome {}

        /** The question is too large. */
        record Refused(String sentence) implements Outcome {}
    }

    private final Catalogue catalogue;
    private final Definition definition;
    private final Inquiry inquiry;
    private final Optional<Finding> known;
    private final AtomicBoolean superseded = new AtomicBoolean();
    private final String name;

    private Hunt(Catalogue catalogue, Definition definition, Inquiry inquiry, Optional<Finding> known, Words words) {
        this.catalogue = catalogue;
        this.definition = definition;
        this.inquiry = inquiry;
        this.known = known;
        this.name = words.text(known.isPresent() ? "work.judge" : "work.find");
    }

    /** Searches. */
    static Hunt forCassettes(Catalogue catalogue, Definition definition, Inquiry inquiry, Words words) {
        return new Hunt(catalogue, definition, inquiry, Optional.empty(), words);
    }

    /** Judges what was found once more, in the project as it is now. */
    static Hunt again(Catalogue catalogue, Definition definition, Finding finding, Words words) {
        return new Hunt(catalogue, definition, finding.inquiry(), Optional.of(finding), words);
    }

    /** A newer one has come; this one ends soon. */
    void supersede() {
        superseded.set(true);
    }

    boolean isSuperseded() {
        return superseded.get();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Outcome with(Bench.Progress progress) {
        Progress watched = watched(progress);
        try {
            long begin = System.nanoTime();
            if (known.isPresent()) {
                return new Outcome.Ready(judge(known.get(), watched));
            }
            BestSet set = CassetteSearch.find(inquiry.question(), watched);
            return new Outcome.Ready(Finding.unjudged(inquiry, set, definition, (System.nanoTime() - begin) / 1e9));
        } catch (Cancelled stopped) { // an end like any other
            return new Outcome.Stopped();
        } catch (Contradiction tooLarge) { // its message is a sentence for users
            return new Outcome.Refused(tooLarge.getMessage());
        }
    }

    private Finding judge(Finding found, Progress progress) {
        CassetteJudge judge = judge();
        List<Candidate> judged = new ArrayList<>();
        for (Candidate one : found.shown()) {
            progress.report(judged.size(), found.shown().size());
            Optional<Judged> verdicts =
                    progress.cancelled() ? Optional.empty() : Optional.of(judge.judge(one.cassette()));
            judged.add(Candidate.of(one.found(), inquiry.rings(), verdicts));
        }
        return found.judged(judged, judge.today(), definition);
    }

    /** A judge of cassettes in the concept, with a ledger of its own. */
    private CassetteJudge judge() {
        return CassetteJudge.of(
                new Ledger(catalogue, definition, DEEPEST),
                inquiry.concept(),
                Optional.of(inquiry.rings()),
                inquiry.question().mass());
    }

    private Progress watched(Bench.Progress progress) {
        return new Progress() {
            @Override
            public void report(long done, long total) {
                progress.at(done, total);
            }

            @Override
            public boolean cancelled() {
                return superseded.get() || progress.isStopped();
            }
        };
    }
}
