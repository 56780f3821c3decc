/** Our own parts of windows: each a value, a painter for it, and where people can act on it a component. */
package groupwright.workbench.components;
