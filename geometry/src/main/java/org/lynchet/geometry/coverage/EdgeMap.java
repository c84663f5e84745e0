package org.lynchet.geometry.coverage;

/**
 * Maps edges, pairs of vertices, to whole numbers.
 *
 * <p>Open addressing over primitive arrays: coverages have thousands of edges, and boxing them was
 * most of the time that was spent on finding neighbours.
 */
final class EdgeMap {
  /** What {@link #get} gives for an edge that is not there. */
  static final int ABSENT = Integer.MIN_VALUE;

  /** The complements of the keys, which are below 0; 0 where there is none. */
  private long[] keys;

  private int[] values;
  private int size;

  EdgeMap(int expected) {
    int capacity = Integer.highestOneBit(Math.max(expected, 8)) * 4;
    keys = new long[capacity];
    values = new int[capacity];
  }

  int get(int from, int to) {
    int slot = slot(key(from, to));
    return keys[slot] == 0 ? ABSENT : values[slot];
  }

  /** Sets the value of an edge; returns what it was. */
  int put(int from, int to, int value) {
    long key = key(from, to);
    int slot = slot(key);
    if (keys[slot] == key) {
      int before = values[slot];
      values[slot] = value;
      return before;
    }
    keys[slot] = key;
    values[slot] = value;
    if (++size * 2 > keys.length) {
      grow();
    }
    return ABSENT;
  }

  private static long key(int from, int to) {
    return ~(((long) from << 32) | to);
  }

  private int slot(long key) {
    int mask = keys.length - 1;
    long mixed = ~key * 0x9E3779B97F4A7C15L;
    int slot = (int) (mixed >>> 33) & mask;
    while (keys[slot] != 0 && keys[slot] != key) {
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  private void grow() {
    long[] oldKeys = keys;
    int[] oldValues = values;
    keys = new long[oldKeys.length * 2];
    values = new int[keys.length];
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] != 0) {
        int slot = slot(oldKeys[i]);
        keys[slot] = oldKeys[i];
        values[slot] = oldValues[i];
      }
    }
  }
}
