/** What documents say about a project: the ledger's answers as the content of templates. */
package groupwright.documents.project;
