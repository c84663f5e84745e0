package org.lynchet.prescription.plan;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Reads the text of a plan file. */
final class PlanText {
  /** Far more than any plan; keeps a wrong file from filling the memory. */
  private static final int LARGEST_BYTES = 1_000_000;

  private static final String WANTED = "a plan file: YAML in UTF-8, at most 1 MB";

  private PlanText() {}

  /** The text; nothing, with a fault, if there is none. */
  static Optional<String> read(Path file, PlanFaults faults) {
    if (Files.isDirectory(file)) {
      faults.addWhole("this is a folder", WANTED, "name the plan file in it");
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      return decode(in.readNBytes(LARGEST_BYTES + 1), faults);
    } catch (NoSuchFileException e) {
      faults.addWhole("no such file", WANTED, "check the name and the folder");
    } catch (AccessDeniedException e) {
      faults.addWhole("you may not read this file", WANTED, "check its permissions");
    } catch (IOException e) {
      faults.addWhole("the file cannot be read: " + e.getMessage(), WANTED, "check the file");
    }
    return Optional.empty();
  }

  private static Optional<String> decode(byte[] bytes, PlanFaults faults) {
    if (bytes.length > LARGEST_BYTES) {
      faults.addWhole("the file is larger than 1 MB", WANTED, "check that this is the plan");
      return Optional.empty();
    }
    ByteBuffer rest = ByteBuffer.wrap(bytes);
    try {
      return Optional.of(StandardCharsets.UTF_8.newDecoder().decode(rest).toString());
    } catch (CharacterCodingException e) {
      faults.addWhole(
          "this is not UTF-8 text: byte " + (rest.position() + 1), WANTED, "save it as UTF-8");
      return Optional.empty();
    }
  }
}
