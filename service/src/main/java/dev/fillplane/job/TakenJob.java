package dev.fillplane.job;

/**
 * The answer to a job request.
 *
 * @param id of the job
 * @param json what the caller is told
 * @param replayed whether it is the answer to an earlier request with the same key
 */
public record TakenJob(String id, byte[] json, boolean replayed) {}
