package org.lynchet.integration.witness.shapefile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Reads numbers of either byte order out of one file; offsets are in bytes from 0. */
final class FileBytes {
  private final String name;
  private final byte[] bytes;

  private FileBytes(String name, byte[] bytes) {
    this.name = name;
    this.bytes = bytes;
  }

  static FileBytes read(Path file) throws IOException {
    return new FileBytes(file.getFileName().toString(), Files.readAllBytes(file));
  }

  String name() {
    return name;
  }

  /** The file and an offset in it, as findings name a place. */
  String place(int at) {
    return name + " byte " + at;
  }

  int size() {
    return bytes.length;
  }

  boolean has(int at, int length) {
    return at >= 0 && length >= 0 && (long) at + length <= bytes.length;
  }

  int bigInt(int at) {
    return ByteBuffer.wrap(bytes).getInt(at);
  }

  int littleInt(int at) {
    return little().getInt(at);
  }

  int littleShort(int at) {
    return little().getShort(at) & 0xFFFF;
  }

  double littleDouble(int at) {
    return little().getDouble(at);
  }

  int unsigned(int at) {
    return bytes[at] & 0xFF;
  }

  byte[] slice(int at, int length) {
    return Arrays.copyOfRange(bytes, at, at + length);
  }

  private ByteBuffer little() {
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }
}
