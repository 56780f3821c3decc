/** The rear derailleur: where a closed chain leaves its cage, and what moves the cage along the axle. */
package groupwright.drivetrain.derailleur;
