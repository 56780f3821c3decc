/** The one form for records of all kinds, built from their descriptions; an edit of one field is one edit of the project. */
package groupwright.workbench.form;
