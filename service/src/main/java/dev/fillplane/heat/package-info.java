/**
 * Temperatures and times: the mix, how long it works, when the floor may be used.
 *
 * <p>Temperatures are in degree Celsius, times in s from the moment that water meets powder, masses
 * in kg. Terms: the <em>barrel</em> is the one that holds measured mix water; <em>ice</em> only
 * chills that barrel and is taken out before the water is measured. Portland cement factors are an
 * estimate for levellers, many of which are blends: the sheet's time at its own temperature
 * governs.
 */
package dev.fillplane.heat;
