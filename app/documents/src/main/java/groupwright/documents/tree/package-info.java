/** The finished document: one CommonMark tree with nodes of our own for numbers, verdicts, bars and captions. */
package groupwright.documents.tree;
