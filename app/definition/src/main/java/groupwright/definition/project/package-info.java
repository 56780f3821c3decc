/** A project as it lies in its folder: opening it, saving edits, starting a new one. */
package groupwright.definition.project;
