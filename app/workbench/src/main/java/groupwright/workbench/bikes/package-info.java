/** The place of bikes: which concept fits which bike, why not, and how it looks from above. */
package groupwright.workbench.bikes;
