package groupwright.definition.history;

import groupwright.definition.record.Address;
import java.util.Optional;

/** A field that differs, with what stood there and what stands there; nothing where the field was or is empty. */
public record FieldChange(Address address, Optional<Object> before, Optional<Object> after) {}
