package groupwright.workbench.concepts;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JComponent;

/** The place of concepts. */
public final class ConceptsPlace implements Place {
    /** What the user chose to see; chosen on the event thread, read on the ledger's. */
    private record Choice(Optional<RecordId> riders, Shown shown) {}

    private final Bench bench;
    private final ConceptsView view;
    private final AtomicReference<Choice> choice = new AtomicReference<>(new Choice(Optional.empty(), Shown.WORKED_ON));

    public ConceptsPlace(Bench bench, Catalogue catalogue) {
        this.bench = bench;
        this.view = new ConceptsView(bench, catalogue, this::ride, this::choose);
    }

    private void ride(RecordId riders) {
        choice.updateAndGet(before -> new Choice(Optional.of(riders), before.shown()));
        bench.refresh();
    }

    private void choose(Shown shown) {
        choice.updateAndGet(before -> new Choice(before.riders(), shown));
        bench.refresh();
    }

    @Override
    public PlaceName name() {
        return PlaceName.CONCEPTS;
    }

    @Override
    public JComponent component() {
        return view;
    }

    @Override
    public List<Sheet> sheets() {
        return List.of(asked -> {
            Choice chosen = choice.get();
            ConceptsSheet sheet = new ConceptsReading(asked, bench.locale()).of(chosen.riders(), chosen.shown());
            return () -> view.show(sheet);
        });
    }

    /** Concepts to choose from without one that leads: nothing is measured then. */
    @Override
    public int openThings(View asked) {
        Assessment assessment = new Assessment(asked);
        return assessment.lead().isEmpty() && !assessment.concepts().isEmpty() ? 1 : 0;
    }

    @Override
    public void reveal(Address address) {
        view.reveal(address);
    }
}
