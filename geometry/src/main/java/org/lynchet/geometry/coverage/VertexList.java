package org.lynchet.geometry.coverage;

import java.util.Arrays;

/** Grows a list of vertices, unboxed. */
final class VertexList {
  private int[] vertices;
  private int size;

  VertexList() {
    this(8);
  }

  /** Has room for so many at first, at least one. */
  VertexList(int expected) {
    vertices = new int[expected];
  }

  void add(int vertex) {
    if (size == vertices.length) {
      vertices = Arrays.copyOf(vertices, size * 2);
    }
    vertices[size++] = vertex;
  }

  /** Copies a part into an array. */
  void copy(int from, int to, int[] into, int at) {
    System.arraycopy(vertices, from, into, at, to - from);
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
