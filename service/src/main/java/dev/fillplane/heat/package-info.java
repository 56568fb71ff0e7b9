/** Temperatures and times: the mix, how long it works, when the floor may be used. */
package dev.fillplane.heat;
