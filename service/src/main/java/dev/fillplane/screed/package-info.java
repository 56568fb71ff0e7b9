/**
 * Depth pins for thin pours, rails for deep ones: below 15 mm of mean depth a bay gets pins, from
 * there on rails as far as the pour is 10 mm deep, and pins beyond (common practice, no source).
 */
package dev.fillplane.screed;
