package groupwright.definition.figure;

import groupwright.definition.record.Address;

/**
 * An input that is not there.
 *
 * @param address where it belongs
 * @param remedy what to do, without a full stop
 */
public record MissingInput(Address address, String remedy) implements Comparable<MissingInput> {
    @Override
    public int compareTo(MissingInput other) {
        int byAddress = address.compareTo(other.address);
        return byAddress != 0 ? byAddress : remedy.compareTo(other.remedy);
    }
}
