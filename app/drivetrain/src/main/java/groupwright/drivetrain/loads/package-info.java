/** Load histories counted into cycles and levels, and what such counts say about fatigue. */
package groupwright.drivetrain.loads;
