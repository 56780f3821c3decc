package groupwright.workbench.requirements;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.View;
import groupwright.definition.quality.StatementChecks;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JComponent;

/** The place of requirements. */
public final class RequirementsPlace implements Place {
    private final Bench bench;
    private final RequirementsView view;
    private final AtomicReference<Optional<RecordId>> inSight = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<StatementChecks>> checks = new AtomicReference<>(Optional.empty());

    public RequirementsPlace(Bench bench, Catalogue catalogue) {
        this.bench = bench;
        this.view = new RequirementsView(bench, catalogue, this::inSight);
    }

    @Override
    public PlaceName name() {
        return PlaceName.REQUIREMENTS;
    }

    @Override
    public JComponent component() {
        return view;
    }

    @Override
    public List<Sheet> sheets() {
        return List.of(
                asked -> {
                    RequirementsSheet sheet = reading(asked).sheet();
                    return () -> view.show(sheet);
                },
                asked -> {
                    Optional<Detail> detail = detail(asked, inSight.get());
                    return () -> view.show(detail);
                });
    }

    @Override
    public int openThings(View asked) {
        return Reading.open(asked);
    }

    @Override
    public void reveal(Address address) {
        view.reveal(address);
    }

    /** Another requirement is in sight: its detail is read at once, without reading the list again. */
    private void inSight(Optional<RecordId> id) {
        inSight.set(id);
        bench.ask(asked -> detail(asked, id), view::show);
    }

    private Optional<Detail> detail(View asked, Optional<RecordId> id) {
        return id.flatMap(new DetailReading(reading(asked))::of);
    }

    /** Word lists are read once, on the ledger's thread. */
    private Reading reading(View asked) {
        StatementChecks known = checks.get().orElseGet(() -> StatementChecks.in(bench.locale()));
        checks.set(Optional.of(known));
        return new Reading(asked, known, bench.locale());
    }
}
