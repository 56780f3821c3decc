/** The document as Markdown. */
package groupwright.documents.markdown;
