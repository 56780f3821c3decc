package groupwright.workbench.find;

import groupwright.definition.figure.Ask;
import groupwright.definition.record.Address;

/** Something that was found. */
public sealed interface Found {
    /** What it is called. */
    String title();

    /** What stands muted before the title: the id of a record, or the word figure. */
    String mark();

    /** What stands muted behind the title. */
    String detail();

    /** A record. */
    record OfRecord(Address address, String mark, String title, String detail) implements Found {}

    /** A figure of a subject. */
    record OfFigure(Ask ask, String mark, String title, String detail) implements Found {}
}
