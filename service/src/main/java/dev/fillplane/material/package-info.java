/**
 * Data sheets of underlayments, whether they agree with themselves, and a catalogue of invented
 * generic ones.
 */
package dev.fillplane.material;
