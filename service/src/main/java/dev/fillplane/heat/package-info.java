/**
 * Temperatures and times: the mix, how long it works, when the floor may be used.
 *
 * <p>Temperatures are in degree Celsius, times in s from the moment that water meets powder, masses
 * in kg. Terms: the <em>barrel</em> is the one that holds measured mix water; <em>ice</em> only
 * chills that barrel and is taken out before the water is measured. Portland cement factors are an
 * estimate for levellers, many of which are blends with calcium aluminate: the sheet's times at its
 * own temperatures govern. Evaporation is in kg/m2/s; humidity is relative, 0 to 1, of the air, or
 * of the holes in a slab.
 */
package dev.fillplane.heat;
