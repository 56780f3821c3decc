/** The fixed words of documents in the reader's language. */
package groupwright.documents.labels;
