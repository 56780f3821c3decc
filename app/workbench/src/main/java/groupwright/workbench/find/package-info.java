/** Finding anything: records by id, title and words, figures by name. */
package groupwright.workbench.find;
