/** Records as JSON files: reading them with places of mistakes, writing them so that nothing unknown is lost. */
package groupwright.definition.interchange;
