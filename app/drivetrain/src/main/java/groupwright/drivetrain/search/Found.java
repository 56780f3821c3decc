package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;

/**
 * A cassette with its values.
 *
 * @param cassette the cogs
 * @param values its value in each objective, chosen or not
 */
public record Found(Cassette cassette, Measures values) {}
