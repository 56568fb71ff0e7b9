/**
 * Requests made by chance, from seeds that are told, against the running service.
 *
 * <p>{@code -Dfuzz.cases=10000} sets how many, {@code -Dfuzz.seed=7} from which seed, {@code
 * -Dfuzz.case=123} runs one of them again.
 */
package dev.fillplane.fuzz;
