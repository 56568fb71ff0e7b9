/**
 * Whether the wet edge holds: the crew at work batch by batch, ages of edges, the verdict, what
 * would make it hold, and what to do when it goes wrong.
 *
 * <p>Times are in seconds from the start of the work, by one clock for the whole floor; ages count
 * from the first water of a batch. An edge is <em>met</em> when the neighbouring batch is placed
 * against it. The times of the batches come from {@link dev.fillplane.pour.BatchTimes}, here a run
 * of events.
 */
package dev.fillplane.pour;
