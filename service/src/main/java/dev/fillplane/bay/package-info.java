/** The geometry of pouring: bays, ribbons, the way of travel, joints. */
package dev.fillplane.bay;
