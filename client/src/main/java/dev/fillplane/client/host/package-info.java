/**
 * What a program with an estimate in it implements so that its floors are planned and priced.
 *
 * <p>The program is the <em>host</em>. It says where its units come from ({@link
 * dev.fillplane.client.host.UnitSource}: rooms and readings), where what came of them goes ({@link
 * dev.fillplane.client.host.EstimateSink}: line items, plans, what is wrong), where progress is
 * shown ({@link dev.fillplane.client.host.ProgressView}) and, if it has them, its prices. These
 * four it hands out as one {@link dev.fillplane.client.host.Host}, named in {@code
 * META-INF/services/dev.fillplane.client.host.Host}.
 *
 * <pre>{@code
 * Host host = Hosts.find("my estimates");
 * RunSummary summary = new HostRun(client).estimate(host);
 * }</pre>
 *
 * <p>A <em>unit</em> is a dwelling or a shop: the rooms that are poured together. Coordinates and
 * lengths on plan are metres or feet, readings, elevations and depths millimetres or inches, as the
 * unit's {@link dev.fillplane.client.host.Measures} say. A larger reading is lower. Every answer is
 * an estimate; local code, the data sheet and licensed practice decide.
 *
 * <p>A host says which version of these interfaces it was built for ({@link
 * dev.fillplane.client.host.Host#VERSION}). The version grows when a host built for the last one
 * would no longer run; what is only added has a default and does not change it.
 */
package dev.fillplane.client.host;
