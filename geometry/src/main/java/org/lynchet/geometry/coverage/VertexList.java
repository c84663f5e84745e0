package org.lynchet.geometry.coverage;

import java.util.Arrays;

/** Grows a list of vertices, unboxed. */
final class VertexList {
  private int[] vertices = new int[8];
  private int size;

  void add(int vertex) {
    if (size == vertices.length) {
      vertices = Arrays.copyOf(vertices, size * 2);
    }
    vertices[size++] = vertex;
  }

  /** Adds a part of another list. */
  void addAll(VertexList others, int from, int to) {
    int count = to - from;
    if (size + count > vertices.length) {
      vertices = Arrays.copyOf(vertices, Math.max(size * 2, size + count));
    }
    System.arraycopy(others.vertices, from, vertices, size, count);
    size += count;
  }

  int get(int index) {
    return vertices[index];
  }

  void set(int index, int vertex) {
    vertices[index] = vertex;
  }

  int size() {
    return size;
  }

  /** Drops all but the first ones. */
  void shorten(int newSize) {
    size = newSize;
  }

  int[] toArray() {
    return Arrays.copyOf(vertices, size);
  }
}
