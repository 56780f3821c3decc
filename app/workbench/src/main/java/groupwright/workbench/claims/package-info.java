/** The place of claims: what may be said, what it rests on, then and now, and what is still open. */
package groupwright.workbench.claims;
