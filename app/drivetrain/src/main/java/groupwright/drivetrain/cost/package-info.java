/** What one set costs to make, and what it may cost. */
package groupwright.drivetrain.cost;
