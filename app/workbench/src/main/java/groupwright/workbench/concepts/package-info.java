/** The place of concepts: their gears as charts, their figures side by side, their teeth typed or changed one by one. */
package groupwright.workbench.concepts;
