/**
 * Measures speed, with the Java Microbenchmark Harness, against yardsticks written as anybody would
 * who has the JTS Topology Suite and an afternoon.
 *
 * <p>A yardstick works in a local plane of metres, turned so that strips run along y, and makes the
 * same zones as the program; it neither matches edges nor promises that nothing is lost. It uses what
 * the library offers to be fast, so that the comparison is fair.
 *
 * <p>Run: {@code mvn -Pbench -pl integration-tests -am verify -Dlynchet.fields=FOLDER}; options of
 * the harness go into {@code -Dbench.options="..."}.
 */
@NullMarked
package org.lynchet.integration.bench;

import org.jspecify.annotations.NullMarked;
