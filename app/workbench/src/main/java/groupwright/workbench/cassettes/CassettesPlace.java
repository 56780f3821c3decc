package groupwright.workbench.cassettes;

import groupwright.definition.cassettes.CogChange;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;

/** The place of cassettes. Searching, judging and easing are long work; a newer search ends the older one. */
public final class CassettesPlace implements Place {
    private final Bench bench;
    private final Catalogue catalogue;
    private final Words words;
    private final CassettesView view;
    private Optional<CassettesSheet> sheet = Optional.empty();
    private Optional<Hunt> hunt = Optional.empty();
    private Optional<Easing> easing = Optional.empty();
    private Optional<Shown> shown = Optional.empty();

    public CassettesPlace(Bench bench, Catalogue catalogue) {
        this.bench = bench;
        this.catalogue = catalogue;
        this.words = Words.of(CassettesPlace.class, bench.locale());
        this.view = new CassettesView(bench, new Doing());
    }

    @Override
    public PlaceName name() {
        return PlaceName.CASSETTES;
    }

    @Override
    public JComponent component() {
        return view;
    }

    @Override
    public List<Sheet> sheets() {
        return List.of(asked -> {
            CassettesSheet next = CassettesReading.of(asked, bench.locale());
            return () -> show(next);
        });
    }

    /** What was not searched is not open. */
    @Override
    public int openThings(View asked) {
        return 0;
    }

    @Override
    public void reveal(Address address) {
        // no record stands here
    }

    private Optional<CassettesSheet.Lead> lead() {
        return sheet.flatMap(CassettesSheet::lead);
    }

    private void show(CassettesSheet next) {
        boolean other = !lead().map(CassettesSheet.Lead::id).equals(next.lead().map(CassettesSheet.Lead::id));
        sheet = Optional.of(next);
        if (other) {
            stopAll();
            shown = Optional.empty();
        }
        view.show(next);
        shown.filter(now -> now.finding().judgedOn() != bench.definition())
                .filter(now -> hunt.isEmpty())
                .ifPresent(now -> judge(now.finding()));
    }

    private void judge(Finding finding) {
        start(Hunt.again(catalogue, bench.definition(), finding, words));
    }

    private void stopAll() {
        hunt.ifPresent(Hunt::supersede);
        hunt = Optional.empty();
        stopEasing();
    }

    private void stopEasing() {
        easing.ifPresent(Easing::supersede);
        easing = Optional.empty();
    }

    private void start(Hunt next) {
        stopAll();
        hunt = Optional.of(next);
        bench.work(next, outcome -> ended(next, outcome));
    }

    private void ended(Hunt one, Hunt.Outcome outcome) {
        if (!hunt.equals(Optional.of(one))) {
            return; // a newer one is under way
        }
        hunt = Optional.empty();
        if (outcome instanceof Hunt.Outcome.Ready ready) {
            took(ready.finding());
        } else if (outcome instanceof Hunt.Outcome.Refused refused) {
            shown = Optional.empty();
            view.refused(refused.sentence());
        }
    }

    private void took(Finding finding) {
        Set<RecordId> riders = view.limits().chosenRiders();
        Shown next = shown.map(now -> now.with(finding)).orElseGet(() -> Shown.first(finding, riders));
        if (next.selected().isEmpty()) {
            next = next.select(next.rows().stream().findFirst().map(Candidate::cassette));
        }
        view.found(finding);
        look(next);
        if (finding.isJudged() && finding.judgedOn() == bench.definition()) {
            ease();
        } else { // judged not yet, or before the last step
            view.noTrouble();
            judge(finding);
        }
    }

    private void look(Shown next) {
        shown = Optional.of(next);
        view.show(next);
    }

    /** Where nothing suits, it is asked what would have to give way. */
    private void ease() {
        stopEasing();
        Optional<Shown> none = shown.filter(now -> now.finding().isWhole()
                && !now.finding().shown().isEmpty()
                && now.finding().suiting(now.riders()).isEmpty());
        if (none.isEmpty()) {
            view.noTrouble();
            return;
        }
        view.none();
        Easing next = new Easing(catalogue, none.get().finding(), words);
        easing = Optional.of(next);
        bench.work(next, eased -> {
            if (easing.equals(Optional.of(next))) {
                easing = Optional.empty();
                eased.ifPresentOrElse(view::eased, view::notEased);
            }
        });
    }

    private void tell(Invalid invalid) {
        bench.tell(new Problem("", 0, 0, "", invalid.field(), invalid.wrong(), invalid.remedy()));
    }

    private final class Doing implements CassettesView.Acts {
        @Override
        public void find(Inquiry inquiry) {
            start(Hunt.forCassettes(catalogue, bench.definition(), inquiry, words));
        }

        @Override
        public void riders(Set<RecordId> chosen) {
            shown.ifPresent(now -> {
                look(now.riders(chosen));
                ease();
            });
        }

        @Override
        public void look(Shown next) {
            CassettesPlace.this.look(next);
        }

        @Override
        public void open(RecordId requirement) {
            bench.open(Address.of(requirement));
        }

        @Override
        public void chooseLead() {
            bench.open(Address.of(RecordId.PROJECT, "leadConcept"));
        }

        @Override
        public void set(Cassette cassette) {
            lead().ifPresent(lead -> bench.edit(
                    Optional.of(words.text("edit.set", lead.id())),
                    definition -> CogChange.in(definition, lead.id(), cassette),
                    CassettesPlace.this::tell));
        }

        @Override
        public void keep(Cassette cassette) {
            lead().ifPresent(lead -> bench.edit(
                    Optional.of(words.text("edit.keep", lead.id())),
                    definition -> CassetteEdits.keep(
                            definition,
                            lead.id(),
                            cassette,
                            words.text(
                                    "kept",
                                    lead.concept().rings().size(),
                                    cassette.cogs().size(),
                                    cassette.smallest().teeth(),
                                    cassette.largest().teeth())),
                    CassettesPlace.this::tell));
        }

        @Override
        public void draft(Cassette cassette) {
            shown.ifPresent(now -> lead().ifPresent(lead -> bench.edit(
                    Optional.of(words.text("edit.draft", lead.id())),
                    definition -> CassetteEdits.draft(
                            definition,
                            lead.id(),
                            now.finding().inquiry().question().ordered(),
                            now.finding().today().found(),
                            now.upForDecision(cassette)),
                    CassettesPlace.this::tell)));
        }

        @Override
        public void pin(Cassette cassette) {
            shown.ifPresent(now -> CassettesPlace.this.look(now.togglePin(cassette)));
        }
    }
}
