/**
 * Durable work on many units, across crashes and across nodes.
 *
 * <p>A <em>job</em> is a list of <em>units</em>, each a request that is planned on its own. A job
 * is accepted in one transaction together with the tasks that work on it. A <em>node</em> is one
 * running service; nodes on one database share the tasks. A task may run more than once (after a
 * crash, when a node was slow); what it writes is keyed by job and unit and is written once. A
 * <em>caller</em> owns its jobs; nobody else sees them.
 *
 * <p>Bodies and answers are bytes here, kept packed: what they mean is known by who makes them.
 */
package dev.fillplane.job;
