package groupwright.workbench.bikes;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.bikes.BikesSheet.Pair;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JComponent;

/** The place of bikes. */
public final class BikesPlace implements Place {
    /** The document that answers a bike maker. */
    public static final String ANSWER = "fit";

    /** What the user chose to see; chosen on the event thread, read on the ledger's. */
    private record Choice(Optional<RecordId> bike, Optional<Pair> opened) {}

    /** The ways to other places. */
    public interface Ways {
        void goTo(PlaceName place);
    }

    private final Bench bench;
    private final Ways ways;
    private final BikesView view;
    private final AtomicReference<Choice> choice =
            new AtomicReference<>(new Choice(Optional.empty(), Optional.empty()));

    /**
     * A place.
     *
     * @param answer opens {@link #ANSWER} among the documents; nothing where there is no such document
     */
    public BikesPlace(Bench bench, Catalogue catalogue, Ways ways, Optional<Runnable> answer) {
        this.bench = bench;
        this.ways = ways;
        this.view = new BikesView(bench, catalogue, Words.of(BikesPlace.class, bench.locale()), new Steps(), answer);
    }

    /** What the view asks for. */
    private final class Steps implements BikesView.Asked {
        @Override
        public void draw(RecordId bike) {
            if (!choice.get().bike().equals(Optional.of(bike))) {
                choice.updateAndGet(before -> new Choice(Optional.of(bike), before.opened()));
                bench.refresh();
            }
        }

        @Override
        public void check(Pair pair) {
            choice.set(new Choice(Optional.of(pair.bike()), Optional.of(pair)));
            bench.refresh();
        }

        @Override
        public void closeChecks() {
            choice.updateAndGet(before -> new Choice(before.bike(), Optional.empty()));
            bench.refresh();
        }

        @Override
        public void goToConcepts() {
            ways.goTo(PlaceName.CONCEPTS);
        }
    }

    @Override
    public PlaceName name() {
        return PlaceName.BIKES;
    }

    @Override
    public JComponent component() {
        return view;
    }

    @Override
    public List<Sheet> sheets() {
        return List.of(asked -> {
            Choice chosen = choice.get();
            BikesSheet sheet = new BikesReading(asked, bench.locale()).of(chosen.bike(), chosen.opened());
            return () -> view.show(sheet);
        });
    }

    /** Bikes that the lead concept misses for certain or cannot be judged on. */
    @Override
    public int openThings(View asked) {
        return BikesReading.open(asked);
    }

    @Override
    public void reveal(Address address) {
        if (bench.definition().all(RecordKinds.BIKE).stream()
                .anyMatch(bike -> bike.id().equals(address.record()) && bike.isCurrent())) {
            new Steps().draw(address.record());
        }
        view.reveal(address);
    }
}
