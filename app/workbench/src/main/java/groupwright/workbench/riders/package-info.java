/** The place of riders: who the project is for, as columns side by side, and what they told. */
package groupwright.workbench.riders;
