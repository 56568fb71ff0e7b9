/**
 * What can hurt somebody on this job, computed from the job.
 *
 * <p>The notes do not replace local code, the data sheet or licensed practice.
 */
package dev.fillplane.safety;
