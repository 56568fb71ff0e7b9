/**
 * How a request is followed from program to program: W3C Trace Context (Recommendation of 23
 * November 2021). Nothing is recorded here; the ids are handed on and told.
 */
package dev.fillplane.trace;
