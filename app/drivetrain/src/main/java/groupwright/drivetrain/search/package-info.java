/** The exact search for the cassettes that no other beats, and why a given cassette is not among them. */
package groupwright.drivetrain.search;
