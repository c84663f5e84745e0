package org.lynchet.integration.witness.shapefile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/** Changes the bytes of a file in one way. */
@FunctionalInterface
interface Damage {

  byte[] apply(byte[] bytes);

  static Damage bigInt(int at, int value) {
    return bytes -> ByteBuffer.wrap(bytes).putInt(at, value).array();
  }

  static Damage littleInt(int at, int value) {
    return bytes -> little(bytes).putInt(at, value).array();
  }

  static Damage littleShort(int at, int value) {
    return bytes -> little(bytes).putShort(at, (short) value).array();
  }

  static Damage littleDouble(int at, double value) {
    return bytes -> little(bytes).putDouble(at, value).array();
  }

  static Damage oneByte(int at, int value) {
    return bytes -> {
      bytes[at] = (byte) value;
      return bytes;
    };
  }

  static Damage text(int at, String value) {
    return bytes -> {
      for (int i = 0; i < value.length(); i++) {
        bytes[at + i] = (byte) value.charAt(i);
      }
      return bytes;
    };
  }

  static Damage cut(int dropped) {
    return bytes -> Arrays.copyOf(bytes, bytes.length - dropped);
  }

  static Damage append(int value) {
    return bytes -> {
      byte[] longer = Arrays.copyOf(bytes, bytes.length + 1);
      longer[bytes.length] = (byte) value;
      return longer;
    };
  }

  /** Turns the order of points around. */
  static Damage reverse(int at, int points) {
    return bytes -> {
      byte[] before = bytes.clone();
      for (int i = 0; i < points; i++) {
        System.arraycopy(before, at + 16 * (points - 1 - i), bytes, at + 16 * i, 16);
      }
      return bytes;
    };
  }

  /** Copies one point onto another. */
  static Damage copyPoint(int from, int to) {
    return bytes -> {
      System.arraycopy(bytes, from, bytes, to, 16);
      return bytes;
    };
  }

  /** Puts a point at an offset. */
  static Damage point(int at, double x, double y) {
    return bytes -> little(bytes).putDouble(at, x).putDouble(at + 8, y).array();
  }

  private static ByteBuffer little(byte[] bytes) {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }
}
