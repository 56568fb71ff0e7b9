/**
 * What the numbers of the wire mean, and the one place where they change units.
 *
 * <p>Inside the service every quantity is in SI: metres (heights too), square and cubic metres,
 * kilograms, seconds, pascals, radians, degrees Celsius. A {@link dev.fillplane.quantity.Dimension}
 * names what a value is and how it is written in each {@link dev.fillplane.quantity.UnitSystem};
 * {@link dev.fillplane.quantity.Measured} puts the dimension on a record component.
 */
package dev.fillplane.quantity;
