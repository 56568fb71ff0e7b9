/**
 * Whether the wet edge holds: batches at the rate of the crew, ages of edges, the verdict, and what
 * would make it hold.
 *
 * <p>Times are in seconds and ages count from the first water of a batch. An edge is <em>met</em>
 * when the neighbouring batch is placed against it. The times of the batches come from {@link
 * dev.fillplane.pour.BatchTimes}, here a steady beat.
 */
package dev.fillplane.pour;
