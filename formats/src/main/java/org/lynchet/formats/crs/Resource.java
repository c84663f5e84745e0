package org.lynchet.formats.crs;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPInputStream;

/** Opens a text that lies beside this class. */
final class Resource {
  private Resource() {}

  static BufferedReader open(String name) throws IOException {
    InputStream in = Resource.class.getResourceAsStream(name);
    if (in == null) {
      throw new IOException("the program lacks its resource " + name);
    }
    InputStream plain = name.endsWith(".gz") ? new GZIPInputStream(in) : in;
    return new BufferedReader(new InputStreamReader(plain, StandardCharsets.UTF_8));
  }
}
