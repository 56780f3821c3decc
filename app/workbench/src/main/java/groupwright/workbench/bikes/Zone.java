package groupwright.workbench.bikes;

import groupwright.definition.figure.Ask;
import groupwright.definition.record.Address;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/**
 * A part of a cell that leads somewhere of its own.
 *
 * @param room in the cell, at 100 %
 * @param ask opens in Workings
 * @param field opens where it is written; only without a question
 */
record Zone(Rectangle2D room, Optional<Ask> ask, Optional<Address> field) {
    static Zone asking(Rectangle2D room, Ask ask) {
        return new Zone(room, Optional.of(ask), Optional.empty());
    }

    static Zone leading(Rectangle2D room, Address field) {
        return new Zone(room, Optional.empty(), Optional.of(field));
    }
}
