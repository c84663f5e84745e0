package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/**
 * Strings edges together into chains that begin and end where other than two edges meet, so that
 * what goes on along a line is handled once and not edge by edge.
 *
 * <p>Edges that dangle, such as the ends of cuts outside the field, bound nothing and are left out,
 * and so are those that dangle then.
 */
final class Chains {
  private static final int NONE = -1;

  /** Edge e has the ends 2e and 2e + 1, each at a vertex. */
  private final VertexList ends;

  /** The ends at one vertex are linked. */
  private final int[] firstAt;

  private final int[] next;
  private final int[] degree;
  private final boolean[] used;

  /**
   * Takes edges in.
   *
   * @param ends the two ends of each edge; no edge occurs twice
   * @param vertices how many vertices there are
   */
  Chains(VertexList ends, int vertices) {
    this.ends = ends;
    this.firstAt = new int[vertices];
    Arrays.fill(firstAt, NONE);
    this.next = new int[ends.size()];
    this.degree = new int[vertices];
    this.used = new boolean[ends.size() / 2];
    for (int end = 0; end < next.length; end++) {
      int vertex = ends.get(end);
      next[end] = firstAt[vertex];
      firstAt[vertex] = end;
      degree[vertex]++;
    }
    for (int end = 0; end < next.length; end++) {
      dropDangling(end);
    }
  }

  /** Drops an edge of which this is a loose end, and those that become loose by that. */
  private void dropDangling(int looseEnd) {
    int end = looseEnd;
    while (end != NONE && !used[end / 2] && degree[ends.get(end)] == 1) {
      used[end / 2] = true;
      degree[ends.get(end)]--;
      int at = ends.get(end ^ 1);
      degree[at]--;
      end = unusedAt(at);
    }
  }

  /** The chains, a closed one with its first vertex repeated at its end. */
  List<int[]> strung() {
    List<int[]> chains = new ArrayList<>();
    follow(end -> degree[ends.get(end)] != 2, chains::add);
    follow(end -> true, chains::add);
    return chains;
  }

  /** Follows the edges that are left from every end that may be a beginning. */
  private void follow(IntPredicate begins, Consumer<int[]> into) {
    for (int end = 0; end < ends.size(); end++) {
      if (!used[end / 2] && begins.test(end)) {
        into.accept(chainFrom(end));
      }
    }
  }

  private int[] chainFrom(int beginning) {
    VertexList chain = new VertexList();
    int end = beginning;
    chain.add(ends.get(end));
    while (end != NONE) {
      used[end / 2] = true;
      int at = ends.get(end ^ 1);
      chain.add(at);
      end = degree[at] == 2 ? unusedAt(at) : NONE;
    }
    return chain.toArray();
  }

  private int unusedAt(int vertex) {
    for (int end = firstAt[vertex]; end != NONE; end = next[end]) {
      if (!used[end / 2]) {
        return end;
      }
    }
    return NONE;
  }
}
