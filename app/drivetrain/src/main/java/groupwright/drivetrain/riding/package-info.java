/** The power a bicycle needs, and the speeds and cadences a rider gets out of it. */
package groupwright.drivetrain.riding;
