/** What a template asks for and what it gets: the one interface between documents and the project. */
package groupwright.documents.content;
