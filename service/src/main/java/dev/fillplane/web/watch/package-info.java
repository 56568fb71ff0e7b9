/**
 * What can be seen of the service from outside: a line of its log for each request, and numbers at
 * {@code /metrics}. Neither knows bodies, names, parameters, addresses or secrets: what they tell
 * is of a fixed set of words, a number, or an id.
 *
 * <p>A <em>note</em> is what is written down about one request on its way; a <em>route</em> is a
 * path of the contract with its braces.
 */
package dev.fillplane.web.watch;
