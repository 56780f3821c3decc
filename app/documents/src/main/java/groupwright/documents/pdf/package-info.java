/** The document as PDF pages. */
package groupwright.documents.pdf;
