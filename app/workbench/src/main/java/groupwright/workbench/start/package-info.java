/** What happens before the window stands: where own data lie, which project is opened, whether there is a display. */
package groupwright.workbench.start;
