/** Charts painted from values, alike for window, picture and page; each also says itself in words and as a table. */
package groupwright.documents.charts;
