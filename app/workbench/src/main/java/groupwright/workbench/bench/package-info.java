/** What a place and the window around it may ask of each other; no widgets, so that a place can be tested without a window. */
package groupwright.workbench.bench;
