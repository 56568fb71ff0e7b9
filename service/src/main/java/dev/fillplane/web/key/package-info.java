/**
 * Keys of callers: what they look like, what they allow, the file that holds them.
 *
 * <p>A key is written {@code fp_<id>_<secret>}. The file holds its id and the SHA-256 of its
 * secret, never the secret.
 */
package dev.fillplane.web.key;
