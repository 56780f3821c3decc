/** What a rider does on a whole ride: speeds, gears, cadences and shifts along the way. */
package groupwright.drivetrain.prediction;
