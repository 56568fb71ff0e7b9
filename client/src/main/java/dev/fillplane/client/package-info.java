/**
 * Calls a Fillplane service.
 *
 * <p>The operations and their models are generated from the contract, in {@code
 * dev.fillplane.client.generated}. This package adds what they lack: one place for address, key and
 * timeouts, and failures as typed exceptions.
 *
 * <pre>{@code
 * FillplaneClient client = FillplaneClient.at(URI.create("http://localhost:8080")).build();
 * HealthApi health = client.api(HealthApi::new);
 * Health state = client.call(health::getLiveness);
 * }</pre>
 */
package dev.fillplane.client;
