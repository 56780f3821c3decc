/** Where the numbers of a document come from: entries, their numbering, and the places that use them. */
package groupwright.documents.trace;
