/**
 * Data sheets of underlayments, whether they agree with themselves, and a catalogue of invented
 * generic ones.
 *
 * <p>Terms: <em>yield</em> is the fresh underlayment that a bag makes, <em>lift</em> one layer of a
 * pour, <em>working time</em> the time from water on powder until it no longer flows together,
 * <em>healing time</em> the time until a cut no longer closes (ASTM C1708). All values are in SI.
 *
 * <p>The mass balance that ties a sheet together: {@code yield * wet density = bag + water}, with
 * no air lost.
 */
package dev.fillplane.material;
