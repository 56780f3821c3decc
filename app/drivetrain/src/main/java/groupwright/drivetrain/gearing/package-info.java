/** What rings, cogs and wheel give: ratios, steps, range, capacity, shift positions. */
package groupwright.drivetrain.gearing;
