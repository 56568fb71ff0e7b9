/**
 * Whether the wet edge holds: batches at the rate of the crew, ages of edges, the verdict, and what
 * would make it hold.
 */
package dev.fillplane.pour;
