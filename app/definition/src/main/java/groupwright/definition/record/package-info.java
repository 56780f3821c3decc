/** The record kinds of a project and the one description each of them carries. */
package groupwright.definition.record;
