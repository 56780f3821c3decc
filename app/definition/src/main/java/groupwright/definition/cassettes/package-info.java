/** Cassettes held against the requirements of a project. */
package groupwright.definition.cassettes;
