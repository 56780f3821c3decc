/** A place as a list whose cells lead on, with what is selected in it below. */
package groupwright.workbench.lists;
