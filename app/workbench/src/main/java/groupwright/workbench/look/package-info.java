/** How the window looks: colours, sizes, type, words. */
package groupwright.workbench.look;
