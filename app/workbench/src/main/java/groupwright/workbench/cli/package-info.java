/** The command line: commands, and answers as text for people and as JSON for machines. */
package groupwright.workbench.cli;
