package dev.fillplane.client;

/**
 * One finding of a refused request.
 *
 * @param code what is wrong, in words for machines, such as {@code outline-crosses-itself}
 * @param pointer where in the request, a JSON Pointer as a fragment (RFC 6901), such as {@code
 *     #/rooms/0/outline}; {@code #} is the whole of it
 * @param detail what is wrong and what to do, in words for people
 */
public record Problem(String code, String pointer, String detail) {}
