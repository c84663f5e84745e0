package org.lynchet.formats.shapefile;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the character encoding of a .dbf: what the .cpg says, else what the language byte says,
 * else ISO-8859-1.
 */
final class DbfCharset {
  private static final Pattern ISO = Pattern.compile("(?:ISO)?[-_ ]?8859[-_ ]?(\\d{1,2})");
  private static final Pattern CODE_PAGE =
      Pattern.compile("(?:ANSI|OEM|CP|IBM|WINDOWS-|MS)?[-_ ]?(\\d{3,5})");
  private static final Pattern LANGUAGE = Pattern.compile("LDID/(\\d{1,3})");

  /** Code pages by language byte; from memory of the lists that GDAL and dBASE publish. */
  private static final Map<Integer, Integer> CODE_PAGES =
      Map.ofEntries(
          Map.entry(0x01, 437),
          Map.entry(0x02, 850),
          Map.entry(0x03, 1252),
          Map.entry(0x08, 865),
          Map.entry(0x0A, 850),
          Map.entry(0x0D, 437),
          Map.entry(0x13, 932),
          Map.entry(0x1F, 852),
          Map.entry(0x26, 866),
          Map.entry(0x37, 850),
          Map.entry(0x4D, 936),
          Map.entry(0x4E, 949),
          Map.entry(0x4F, 950),
          Map.entry(0x50, 874),
          Map.entry(0x58, 1252),
          Map.entry(0x59, 1252),
          Map.entry(0x64, 852),
          Map.entry(0x65, 866),
          Map.entry(0x66, 865),
          Map.entry(0x67, 861),
          Map.entry(0x6A, 737),
          Map.entry(0x6B, 857),
          Map.entry(0xC8, 1250),
          Map.entry(0xC9, 1251),
          Map.entry(0xCA, 1254),
          Map.entry(0xCB, 1253),
          Map.entry(0xCC, 1257));

  private DbfCharset() {}

  /** The encoding, or nothing if the .cpg names one that nobody knows. */
  static Optional<Charset> find(String cpg, int languageByte) {
    String name = cpg.strip().toUpperCase(Locale.ROOT);
    return name.isEmpty() ? Optional.of(byLanguage(languageByte)) : byName(name);
  }

  private static Charset byLanguage(int languageByte) {
    Integer page = CODE_PAGES.get(languageByte);
    return page == null
        ? StandardCharsets.ISO_8859_1
        : byCodePage(page).orElse(StandardCharsets.ISO_8859_1);
  }

  private static Optional<Charset> byName(String name) {
    Matcher language = LANGUAGE.matcher(name);
    if (language.matches()) {
      return Optional.of(byLanguage(Integer.parseInt(language.group(1))));
    }
    Matcher iso = ISO.matcher(name);
    if (iso.matches()) {
      return first(List.of("ISO-8859-" + iso.group(1)));
    }
    Matcher page = CODE_PAGE.matcher(name);
    if (page.matches()) {
      return byCodePage(Integer.parseInt(page.group(1)));
    }
    return first(List.of(name.equals("UTF8") ? "UTF-8" : name));
  }

  private static Optional<Charset> byCodePage(int page) {
    if (page == 65001) {
      return Optional.of(StandardCharsets.UTF_8);
    }
    String padded = String.format(Locale.ROOT, "%03d", page);
    return first(
        List.of(
            "windows-" + page, "IBM" + padded, "x-windows-" + page, "x-IBM" + page, "MS" + page));
  }

  private static Optional<Charset> first(List<String> names) {
    return names.stream().filter(DbfCharset::isSupported).findFirst().map(Charset::forName);
  }

  private static boolean isSupported(String name) {
    return name.matches("[A-Za-z0-9][A-Za-z0-9+.:_-]*") && Charset.isSupported(name);
  }
}
