package org.lynchet.formats;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Unpacks the entries of one .zip and counts what comes out, whatever the .zip says of itself. */
final class UnpackedBytes {
  /** The most that one .zip may hold in the files that are read. */
  static final long LIMIT = 512L << 20;

  /** From here on a .zip has to look like one that somebody packed. */
  private static final long SUSPICIOUS = 32L << 20;

  /** Most of a table is blanks, and deflates well; a file of one byte repeated reaches 1030. */
  private static final long MAX_RATIO = 200;

  private static final int CHUNK = 1 << 16;

  private long total;

  byte[] read(ZipFile zip, ZipEntry entry, String place) throws IOException, FormatException {
    long packed = Math.max(1, entry.getCompressedSize());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] chunk = new byte[CHUNK];
    try (InputStream in = zip.getInputStream(entry)) {
      for (int n = in.read(chunk); n >= 0; n = in.read(chunk)) {
        out.write(chunk, 0, n);
        total += n;
        if (total > LIMIT || (out.size() > SUSPICIOUS && out.size() / packed > MAX_RATIO)) {
          throw new FormatException(
              new Fault(
                  "it unpacks to more than " + total + " bytes",
                  place,
                  "at most " + LIMIT + " bytes, and " + MAX_RATIO + " for each packed byte",
                  "pack the files of one farm only"));
        }
      }
    }
    return out.toByteArray();
  }
}
