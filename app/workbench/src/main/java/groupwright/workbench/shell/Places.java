package groupwright.workbench.shell;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
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
import java.util.function.Supplier;

/** The places that work, in any order. */
final class Places {
    private Places() {}

    /**
     * All of them.
     *
     * @param catalogue the one the project was opened with
     * @param where where the project lies now
     * @param documents what the place of documents keeps
     */
    static List<Place> all(Bench bench, Catalogue catalogue, Supplier<Whereabouts> where, DocumentsKeeping documents) {
        Clock clock = Clock.systemDefaultZone();
        return List.of(
                new RidersPlace(bench, catalogue),
                new RequirementsPlace(bench, catalogue),
                new ConceptsPlace(bench, catalogue),
                new ClaimsPlace(bench, catalogue, clock),
                new RecordsPlace(
                        bench,
                        catalogue,
                        PlaceName.BIKES,
                        List.of(new Shown(
                                RecordKinds.BIKE,
                                List.of(
                                        "id",
                                        "title",
                                        "chainstay_mm",
                                        "driverSmallest_teeth",
                                        "largestRing_teeth",
                                        "largestTyre_mm")))),
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
}
