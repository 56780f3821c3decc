/** The place of cassettes: limits at the left, what no other beats at the right, and what can be done with it. */
package groupwright.workbench.cassettes;
