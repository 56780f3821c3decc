package groupwright.workbench.riders;

import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.List;

/** Ways to look at a part of the needs. */
sealed interface NeedFacet {
    boolean holds(NeedRow need);

    /** All in use, those without which a rider will not buy, those nobody answers, and what is retired. */
    enum Plain implements NeedFacet {
        ALL,
        MUST,
        UNANSWERED,
        RETIRED;

        @Override
        public boolean holds(NeedRow need) {
            return switch (this) {
                case ALL -> need.isCurrent();
                case MUST -> need.isCurrent() && need.importance() == Need.Importance.MUST;
                case UNANSWERED -> need.isUnanswered();
                case RETIRED -> !need.isCurrent();
            };
        }
    }

    /** Those of one rider group. */
    record Of(RecordId group) implements NeedFacet {
        @Override
        public boolean holds(NeedRow need) {
            return need.isCurrent() && need.riders().contains(group);
        }
    }

    /** The facets of a project, in the order they are shown. */
    static List<NeedFacet> of(RidersSheet sheet) {
        List<NeedFacet> facets = new ArrayList<>(List.of(Plain.ALL, Plain.MUST, Plain.UNANSWERED));
        sheet.groups().forEach(group -> facets.add(new Of(group.id())));
        facets.add(Plain.RETIRED);
        return facets;
    }
}
