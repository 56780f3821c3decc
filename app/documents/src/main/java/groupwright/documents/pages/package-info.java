/** The document laid out on pages: written as a PDF file or painted on a screen. */
package groupwright.documents.pages;
