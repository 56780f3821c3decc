/** A place for any kinds of record: list, form, and what can be done with one. */
package groupwright.workbench.records;
