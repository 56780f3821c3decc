/** Reference pages made from the descriptions of records and figures. */
package groupwright.definition.reference;
