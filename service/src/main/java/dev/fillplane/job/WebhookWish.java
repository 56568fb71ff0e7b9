package dev.fillplane.job;

/**
 * Who is told that a job has ended.
 *
 * @param url http or https
 */
public record WebhookWish(String url) {}
