/**
 * What a plan takes and costs, line by line.
 *
 * <p>An <em>item</em> is something that is bought, hired, worked or taken away, with a code of its
 * own. A <em>need</em> is how much of an item a plan takes, with its place in the plan. A
 * <em>line</em> is a need in the unit in which its item is sold, rounded up to whole packs and
 * priced. A <em>price book</em> tells what items cost, in decimals that are never binary fractions.
 */
package dev.fillplane.estimate;
