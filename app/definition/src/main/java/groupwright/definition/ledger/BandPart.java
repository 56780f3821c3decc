package groupwright.definition.ledger;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;

/**
 * What one banded input adds to the band of an answer.
 *
 * @param address the field that states a band
 * @param amount its value and band
 * @param half half the difference of the answers at both ends of that band, in the answer's unit; may be negative
 */
public record BandPart(Address address, Amount amount, double half) {}
