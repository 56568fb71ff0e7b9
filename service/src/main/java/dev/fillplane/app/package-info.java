/** The command line: serve, demo, plan. */
package dev.fillplane.app;
