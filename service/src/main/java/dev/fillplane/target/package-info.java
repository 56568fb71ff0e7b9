/** The plane that the finished pour should lie in. */
package dev.fillplane.target;
