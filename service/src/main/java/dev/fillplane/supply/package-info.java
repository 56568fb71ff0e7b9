/** What must be on site: bags with their odds, water, primer, lifts, dams. */
package dev.fillplane.supply;
