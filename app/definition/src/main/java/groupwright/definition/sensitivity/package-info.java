/** Which numbers of the records move an answer, and how far. */
package groupwright.definition.sensitivity;
