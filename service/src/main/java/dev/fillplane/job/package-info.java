/** Durable work of many units, and the webhooks that tell of it. */
package dev.fillplane.job;
