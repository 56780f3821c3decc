/** What a set of parts will weigh, and how far off that may be. */
package groupwright.drivetrain.mass;
