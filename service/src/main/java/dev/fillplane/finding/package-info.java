/**
 * What is wrong or odd about a request, as data.
 *
 * <p>A {@link dev.fillplane.finding.Finding} has a code, the {@link dev.fillplane.finding.Place} in
 * the request that caused it and the values that belong to it. The sentence that a person reads is
 * made at the edge of the service, in the caller's units.
 */
package dev.fillplane.finding;
