/** Answers as people read them: rounded, in their language, with units. */
package groupwright.documents.numbers;
