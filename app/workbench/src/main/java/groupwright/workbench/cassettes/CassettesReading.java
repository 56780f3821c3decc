package groupwright.workbench.cassettes;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.charts.ConceptSign;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.ConceptCharts;
import java.util.Locale;

/** Asks the ledger what the place has to know. */
final class CassettesReading {
    private CassettesReading() {}

    static CassettesSheet of(View view, Locale locale) {
        Assessment assessment = new Assessment(view);
        ConceptCharts charts = new ConceptCharts(view, new Reader(locale));
        RecordId next = view.definition().nextId(RecordKinds.CONCEPT);
        return new CassettesSheet(
                assessment
                        .lead()
                        .flatMap(id -> view.definition().get(id, Concept.class))
                        .filter(concept -> concept.cogs().size() > 1)
                        .map(concept -> new CassettesSheet.Lead(concept, charts.sign(concept.id()))),
                new CassettesSheet.Next(next, new ConceptSign(Math.max(1, next.number()), ConceptSign.Standing.LEAD)),
                assessment.riderGroups().stream()
                        .map(group -> new CassettesSheet.Riders(group.id(), group.title()))
                        .toList(),
                charts.requiredLimit(),
                assessment.concepts().size(),
                assessment.requirements().size());
    }
}
