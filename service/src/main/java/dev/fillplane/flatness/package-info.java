/** The floor under a straightedge, and what coverings allow. */
package dev.fillplane.flatness;
