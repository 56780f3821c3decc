/** What an edit changed and what followed from it. */
package groupwright.definition.history;
