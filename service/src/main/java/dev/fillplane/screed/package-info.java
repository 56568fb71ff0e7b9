/** Depth pins for thin pours, rails for deep ones. */
package dev.fillplane.screed;
