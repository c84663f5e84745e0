/**
 * Measures speed, with the Java Microbenchmark Harness, against yardsticks written as anybody would
 * who has the JTS Topology Suite and an afternoon.
 *
 * <p>A yardstick makes the same zones as the program in the same offset frame; it neither matches
 * edges nor joins small pieces nor promises that nothing is lost, and gives no product or rate. It
 * uses what the library offers to be fast, so that the comparison is fair.
 *
 * <p>BENCHMARKS.md says how to run them and what came out.
 */
@NullMarked
package org.lynchet.integration.bench;

import org.jspecify.annotations.NullMarked;
