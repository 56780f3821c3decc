/** How each type of field is written for a reader and read back from what a reader typed; no widgets. */
package groupwright.workbench.notation;
