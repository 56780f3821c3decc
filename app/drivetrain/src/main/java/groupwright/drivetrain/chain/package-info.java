/** Geometry and load of a roller chain on toothed wheels. */
package groupwright.drivetrain.chain;
