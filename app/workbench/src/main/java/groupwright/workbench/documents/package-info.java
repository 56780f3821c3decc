/** The place where documents are read as they will print, and written. */
package groupwright.workbench.documents;
