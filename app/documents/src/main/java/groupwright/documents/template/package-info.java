/** Templates and what they are filled with. */
package groupwright.documents.template;
