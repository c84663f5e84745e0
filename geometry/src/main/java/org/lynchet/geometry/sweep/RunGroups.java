package org.lynchet.geometry.sweep;

/** Groups the runs in a band that hang together inside it. */
final class RunGroups {
  private final Run[] runs;

  /** While grouping, a run nearer to the first of its group; then the group's complement. */
  private final int[] groupOf;

  RunGroups(Run[] runs) {
    this.runs = runs;
    this.groupOf = new int[runs.length];
  }

  /**
   * Groups runs.
   *
   * @param active numbers of the runs in the band
   * @param right the band's right edge
   * @return how many groups there are
   */
  int group(int[] active, int count, double right) {
    for (int i = 0; i < count; i++) {
      groupOf[active[i]] = active[i];
    }
    for (int i = 0; i < count; i++) {
      Run run = runs[active[i]];
      if (run.end < right - BandReader.ON_CUT) {
        for (int next : run.next) {
          groupOf[root(next)] = root(active[i]);
        }
      }
    }
    return number(active, count);
  }

  private int number(int[] active, int count) {
    int groups = 0;
    for (int i = 0; i < count; i++) {
      int run = active[i];
      if (groupOf[run] == run) {
        groupOf[run] = ~groups++;
      }
    }
    for (int i = 0; i < count; i++) {
      int root = active[i];
      while (groupOf[root] >= 0) {
        root = groupOf[root];
      }
      groupOf[active[i]] = groupOf[root];
    }
    return groups;
  }

  private int root(int run) {
    int root = run;
    while (groupOf[root] != root) {
      groupOf[root] = groupOf[groupOf[root]];
      root = groupOf[root];
    }
    return root;
  }

  /** The group of a run, from 0. */
  int of(int run) {
    return ~groupOf[run];
  }
}
