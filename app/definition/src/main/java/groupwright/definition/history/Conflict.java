package groupwright.definition.history;

import groupwright.definition.record.Address;
import java.util.Optional;

/**
 * A place that two sides changed differently.
 *
 * @param address a field; an object in a list, where one side took it out; a list, where both put it in another order; or a
 *     whole record, where one side took it out or what both wrote does not go together
 * @param base what stood there before both
 * @param ours what stands on our side
 * @param theirs what stands on theirs; in each case nothing where the place is empty
 */
public record Conflict(Address address, Optional<Object> base, Optional<Object> ours, Optional<Object> theirs) {}
