/** The one table for records of all kinds: it maps immutable rows to cells, sorts, filters, copies, and edits single fields. */
package groupwright.workbench.table;
