/**
 * The only HTTP of the service: routes, what is asked at the door, problems, limits.
 *
 * <p>A request is parsed to a tree, held against its schema of the contract, bound to a record in
 * SI, answered by a {@link dev.fillplane.web.Calculation}, and written in the caller's units. Every
 * error leaves as an RFC 9457 problem document.
 */
package dev.fillplane.web;
