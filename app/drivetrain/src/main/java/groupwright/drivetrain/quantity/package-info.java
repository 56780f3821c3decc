/** Small checked values that must not be swapped: tooth counts, lengths, wheels. */
package groupwright.drivetrain.quantity;
