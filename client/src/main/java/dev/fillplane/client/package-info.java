/**
 * Calls a Fillplane service.
 *
 * <p>The operations and their models are generated from the contract, in {@code
 * dev.fillplane.client.generated}. This package adds what they lack: one place for address, key and
 * timeouts, failures as typed exceptions, attempts that are repeated where that is safe, streams of
 * plans, jobs to wait for, and the check of webhooks. A program with estimates of its own may begin
 * with {@code dev.fillplane.client.host} instead.
 *
 * <pre>{@code
 * FillplaneClient client = FillplaneClient.at(URI.create("http://localhost:8080")).build();
 * PlansApi plans = client.api(PlansApi::new);
 * Plan plan = client.call(() -> plans.makePlan(request));
 *
 * try (PlanStream stream = client.streamPlans(requests)) {
 *   while (stream.hasNext()) {
 *     PlanLine line = stream.next();
 *     line.answer().ifPresent(this::use);
 *     line.problem().ifPresent(this::show);
 *   }
 * }
 *
 * RunningJob job = client.startJob(new JobRequest().plans(many));
 * job.await(Duration.ofHours(1), seen -> show(seen.getDone())).ifPresent(ended -> job.units());
 * }</pre>
 */
package dev.fillplane.client;
