package groupwright.workbench.cassettes;

import groupwright.definition.cassettes.CassetteJudge;
import groupwright.definition.cassettes.Relaxation;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.search.Cancelled;
import groupwright.drivetrain.search.EveryCassette;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Progress;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import java.math.BigInteger;
import java.util.Iterator;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/** Looks for the smallest relaxation of requirements that leaves a cassette. On the thread of long work. */
final class Easing implements Bench.Work<Optional<Easing.Eased>> {
    /** So many cassettes are tried one by one; of more only those of the best set. */
    static final long MOST_TRIED = 20_000;

    private static final int DEEPEST = 500;

    /** Which cassettes were tried. */
    enum Tried {
        ALL,
        BEST_SET
    }

    /** What was found among which. */
    record Eased(Relaxation.Outcome outcome, Tried tried) {}

    private final Catalogue catalogue;
    private final Finding finding;
    private final Words words;
    private final AtomicBoolean superseded = new AtomicBoolean();

    Easing(Catalogue catalogue, Finding finding, Words words) {
        this.catalogue = catalogue;
        this.finding = finding;
        this.words = words;
    }

    void supersede() {
        superseded.set(true);
    }

    @Override
    public String name() {
        return words.text("work.ease");
    }

    @Override
    public Optional<Eased> with(Bench.Progress progress) {
        Inquiry inquiry = finding.inquiry();
        CassetteJudge judge = CassetteJudge.of(
                new Ledger(catalogue, finding.judgedOn(), DEEPEST),
                inquiry.concept(),
                Optional.of(inquiry.rings()),
                inquiry.question().mass());
        BigInteger admitted = finding.coverage().admitted();
        boolean all = admitted.compareTo(BigInteger.valueOf(MOST_TRIED)) <= 0;
        Iterator<Cassette> cassettes = all
                ? EveryCassette.of(inquiry.question())
                : finding.set().stream().limit(MOST_TRIED).map(Found::cassette).iterator();
        long count = all ? admitted.longValue() : Math.min(MOST_TRIED, finding.outOf());
        try {
            return Optional.of(new Eased(
                    Relaxation.search(judge, cassettes, Math.max(1, count), watched(progress)),
                    all ? Tried.ALL : Tried.BEST_SET));
        } catch (Cancelled stopped) { // an end like any other
            return Optional.empty();
        }
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
