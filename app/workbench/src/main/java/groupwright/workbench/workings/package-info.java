/** The panel about the number last selected: what it is, what went in, how well it is known, and who relies on it. */
package groupwright.workbench.workings;
