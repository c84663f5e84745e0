package org.lynchet.integration.endtoend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Copies folders and tells whether two hold the same bytes. */
final class Folders {
  private Folders() {}

  /** The SHA-256 of every file below a folder, by path with slashes; hidden files too. */
  static SortedMap<String, String> digests(Path folder) throws IOException {
    SortedMap<String, String> digests = new TreeMap<>();
    for (Path file : files(folder)) {
      String name = folder.relativize(file).toString().replace('\\', '/');
      digests.put(name, sha256(Files.readAllBytes(file)));
    }
    return digests;
  }

  /** Copies a folder with all below it. */
  static Path copy(Path from, Path to) throws IOException {
    for (Path file : files(from)) {
      Path copy = to.resolve(from.relativize(file).toString());
      Files.createDirectories(copy.getParent());
      Files.copy(file, copy);
    }
    return to;
  }

  private static Path[] files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toArray(Path[]::new);
    }
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java has SHA-256", e);
    }
  }
}
