/**
 * The OpenAPI contract of Fillplane, kept in small files and bundled to one document.
 *
 * <p>The files: {@code openapi.yaml} (the root), {@code paths/*.yaml} (each a map of name to path
 * item), {@code schemas/*.yaml} (each a map of schema name to schema), optionally {@code
 * responses.yaml}, {@code parameters.yaml}, {@code headers.yaml} and {@code requestBodies.yaml}
 * (each a map of name to component), and {@code examples/*.json}. References are relative to the
 * file they stand in: {@code ../schemas/room.yaml#/Room}, or {@code #/Room} within that file.
 */
package dev.fillplane.openapi;
