package groupwright.workbench.claims;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.components.Evidence;
import java.util.Optional;

/**
 * One claim in the list.
 *
 * @param first the answer that decides most; nothing where it rests on nothing
 * @param leads where the link in the row leads
 * @param evidence nothing once it is withdrawn
 * @param open what is left to do or to know
 */
record ClaimRow(
        RecordId id,
        ClaimGroup group,
        Wording wording,
        String channel,
        Optional<Rest> first,
        Optional<Address> leads,
        Optional<Evidence> evidence,
        String open) {}
