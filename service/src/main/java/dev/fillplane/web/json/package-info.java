/**
 * JSON in and out: records of the service in the caller's units.
 *
 * <p>Each {@link dev.fillplane.quantity.UnitSystem} has one mapper. Its (de)serialisers are built
 * once from the {@link dev.fillplane.quantity.Measured} dimension of each record component, so a
 * quantity changes units as its token is read or written and nowhere else.
 */
package dev.fillplane.web.json;
