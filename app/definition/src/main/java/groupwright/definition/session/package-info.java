/** An open project: edited, saved, undone, and joined with what other people change on disk. */
package groupwright.definition.session;
