package dev.fillplane.pour;

import dev.fillplane.finding.Remark;

/**
 * Something that can go wrong in a pour.
 *
 * @param code what it is
 * @param bags how many bags are at stake
 * @param now what to do at once
 * @param nextDay what to do the day after
 */
public record Trouble(Mishap code, int bags, Remark now, Remark nextDay) {}
