/** Whether requirements are met, how far they have come, which needs they cover, and whether claims still hold. */
package groupwright.definition.assessment;
