package dev.fillplane.pour;

import dev.fillplane.heat.Mix;

/**
 * What a pour has at hand when something goes wrong.
 *
 * @param crew who pours
 * @param mix the fresh mix
 * @param bags that are ordered
 * @param dams boards across openings
 * @param walkOn time until people may walk on it
 */
public record TroubleSite(Crew crew, Mix mix, int bags, int dams, double walkOn) {}
