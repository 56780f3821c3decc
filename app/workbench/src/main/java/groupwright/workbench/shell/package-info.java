/** The window around the places: rail, lead concept, finding, undo, workings, ripple line, problems, long work. */
package groupwright.workbench.shell;
