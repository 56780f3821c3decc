/** The ground a ride goes over: profiles of grades, and how they are made from bands, climbs and recorded tracks. */
package groupwright.drivetrain.terrain;
