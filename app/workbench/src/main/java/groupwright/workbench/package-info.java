/** The start of the program. */
package groupwright.workbench;
