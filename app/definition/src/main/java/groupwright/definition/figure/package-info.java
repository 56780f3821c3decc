/**
 * What a figure is and what it may see: the interface through which figure families, our own and those of plugins, add
 * figures to the ledger. No Swing, no JSON.
 */
package groupwright.definition.figure;
