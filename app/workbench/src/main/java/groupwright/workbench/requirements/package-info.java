/** The place of requirements: how each stands for the lead concept, why, and what would move it one rung up. */
package groupwright.workbench.requirements;
