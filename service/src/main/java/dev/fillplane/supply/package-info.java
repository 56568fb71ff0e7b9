/**
 * What must be on site: bags with their odds, water, primer, lifts, thin parts, aggregate, dams.
 *
 * <p>Terms: <em>likely</em> is the median, <em>order</em> what suffices with the confidence that
 * was asked, a <em>lift</em> one layer of the pour (thin where it is under the least of the sheet),
 * a <em>dam</em> a board across an opening. Bags are whole and rounded up. Volumes in m3, areas in
 * m2, depths in m, masses in kg.
 */
package dev.fillplane.supply;
