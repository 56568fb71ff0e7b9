package dev.fillplane.supply;

/**
 * Whole bags, rounded up.
 *
 * @param likely as likely too many as too few
 * @param p10 enough with a chance of 10 %
 * @param p50 the same as likely
 * @param p90 enough with a chance of 90 %
 * @param order enough at the confidence that was asked
 * @param leftOver bags of the order that are left over on average, not rounded
 */
public record Bags(int likely, int p10, int p50, int p90, int order, double leftOver) {}
