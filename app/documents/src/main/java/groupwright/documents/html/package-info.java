/**
 * The document as one HTML file that fetches nothing. Charts are recorded from the marks of their pen: a general library
 * that stands in for Java's graphics writes text as outlines or in its own way and brings an XML stack with it, while
 * charts only ever fill, draw and write.
 */
package groupwright.documents.html;
