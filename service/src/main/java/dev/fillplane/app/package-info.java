/** The command line: serve, key, demo, plan. */
package dev.fillplane.app;
