/** The whole job for one unit: request, answer, and the one composer. */
package dev.fillplane.plan;
