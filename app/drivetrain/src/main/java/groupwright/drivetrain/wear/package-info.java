/** What friction between the links of a chain costs in power and in wear. */
package groupwright.drivetrain.wear;
