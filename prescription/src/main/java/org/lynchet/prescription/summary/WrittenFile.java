package org.lynchet.prescription.summary;

import java.io.Serializable;

/**
 * A file that was written, so that damage on the way can be told.
 *
 * @param path its path below the output folder, with slashes
 * @param bytes its length
 * @param sha256 its SHA-256 digest (FIPS 180-4) in lower-case hexadecimal digits
 */
public record WrittenFile(String path, long bytes, String sha256) implements Serializable {}
