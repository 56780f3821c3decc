/** What an edit changed and what followed from it, in words, shortest first. */
package groupwright.workbench.ripple;
