/** How the window looks: colours, metrics, type and drawing, for both themes and all scales. */
package groupwright.workbench.look;
