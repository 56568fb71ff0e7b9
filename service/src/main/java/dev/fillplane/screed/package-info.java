/**
 * Depth pins for thin pours, rails for deep ones: below 15 mm of mean depth a bay gets pins, from
 * there on rails (common practice, no source).
 */
package dev.fillplane.screed;
