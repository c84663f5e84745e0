package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.lynchet.prescription.summary.WrittenFile;

/** Takes the digests of the files of an output folder. */
final class Digests {
  private Digests() {}

  /** The regular files below a folder, as paths with slashes, in order. */
  static List<String> filesBelow(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString().replace('\\', '/'))
          .sorted()
          .toList();
    }
  }

  static WrittenFile of(Path folder, String path) throws IOException {
    byte[] content = Files.readAllBytes(folder.resolve(path));
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
      return new WrittenFile(path, content.length, HexFormat.of().formatHex(digest));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
