package groupwright.workbench.shell;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.project.ProjectDocuments;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.bikes.BikesPlace;
import groupwright.workbench.cassettes.CassettesPlace;
import groupwright.workbench.claims.ClaimsPlace;
import groupwright.workbench.concepts.ConceptsPlace;
import groupwright.workbench.documents.DocumentsKeeping;
import groupwright.workbench.documents.DocumentsPlace;
import groupwright.workbench.documents.Whereabouts;
import groupwright.workbench.records.RecordsPlace;
import groupwright.workbench.records.RecordsPlace.Shown;
import groupwright.workbench.requirements.RequirementsPlace;
import groupwright.workbench.riders.RidersPlace;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The places that work, in any order. */
final class Places {
    private Places() {}

    /** The ways from place to place. */
    interface Ways {
        void goTo(PlaceName place);

        void openDocument(String name);
    }

    /**
     * All of them.
     *
     * @param catalogue the one the project was opened with
     * @param where where the project lies now
     * @param documents what the place of documents keeps
     * @param ways from place to place
     */
    static List<Place> all(
            Bench bench, Catalogue catalogue, Supplier<Whereabouts> where, DocumentsKeeping documents, Ways ways) {
        Clock clock = Clock.systemDefaultZone();
        return List.of(
                new RidersPlace(bench, catalogue),
                new RequirementsPlace(bench, catalogue),
                new ConceptsPlace(bench, catalogue),
                new CassettesPlace(bench, catalogue),
                new ClaimsPlace(bench, catalogue, clock),
                new BikesPlace(bench, catalogue, ways::goTo, answer(ways)),
                new RecordsPlace(
                        bench,
                        catalogue,
                        PlaceName.WEIGHT,
                        List.of(
                                new Shown(
                                        RecordKinds.PART,
                                        List.of(
                                                "id",
                                                "title",
                                                "group",
                                                "mass_g",
                                                "basis",
                                                "quantity",
                                                "unitCost_minor")),
                                new Shown(RecordKinds.LINE_SOLD, List.of("id", "title", "channel", "price_minor")),
                                new Shown(RecordKinds.YARDSTICK, List.of("id", "title")))),
                new RecordsPlace(
                        bench,
                        catalogue,
                        PlaceName.DECISIONS,
                        List.of(
                                new Shown(RecordKinds.DECISION, List.of("id", "title", "choice")),
                                new Shown(RecordKinds.MILESTONE, List.of("id", "title", "date")))),
                new DocumentsPlace(bench, where, clock, documents));
    }

    /** Opens the document that answers a bike maker, where there is one. */
    private static Optional<Runnable> answer(Ways ways) {
        return ProjectDocuments.names().contains(BikesPlace.ANSWER)
                ? Optional.of(() -> ways.openDocument(BikesPlace.ANSWER))
                : Optional.empty();
    }
}
