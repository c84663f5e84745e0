package org.lynchet.integration.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the zip holds. */
class DistributionIT {
  private static final Pattern JAR = Pattern.compile("(.+?)-(\\d.*)\\.jar");

  @TempDir static Path folder;
  private static Path home = Path.of("");

  @BeforeAll
  static void unpack() throws IOException {
    home = Distribution.unpack(folder).home();
  }

  @Test
  void holdsAllThatAUserNeeds() {
    assertThat(home.getFileName().toString()).matches("lynchet-\\d+\\.\\d+\\.\\d+.*");
    List.of("LICENSE", "NOTICE", "README.md", "CHANGELOG.md", "lynchet.jar", "bin/lynchet.bat")
        .forEach(file -> assertThat(home.resolve(file)).isNotEmptyFile());
    assertThat(home.resolve("bin/lynchet")).isExecutable();
    List.of("sandhill-east/plan.yaml", "PLAN-KEYS.md", "plan.schema.json")
        .forEach(file -> assertThat(home.resolve("examples").resolve(file)).isNotEmptyFile());
  }

  @Test
  void noticeNamesEveryLibraryWithItsVersion() throws IOException {
    String notice = Files.readString(home.resolve("NOTICE"));
    for (Path jar : list(home.resolve("lib"))) {
      Matcher name = JAR.matcher(jar.getFileName().toString());
      assertThat(name.matches()).as(jar.toString()).isTrue();
      if (name.group(1).startsWith("lynchet-")) {
        continue;
      }
      // A library's name in prose ("Apache Commons IO") or its artifact's.
      String words = name.group(1).replace("-", "[- ]");
      assertThat(notice).containsPattern(Pattern.compile(words, Pattern.CASE_INSENSITIVE));
      assertThat(notice).containsPattern("\\s" + Pattern.quote(name.group(2)) + "\\s");
    }
  }

  @Test
  void holdsTheTextsOfLicences() throws IOException {
    assertThat(list(home.resolve("licences")))
        .extracting(text -> text.getFileName().toString())
        .contains("Apache-2.0.txt", "EPL-2.0-and-GPL-2.0-CE.txt", "LGPL-2.1.txt", "MIT-slf4j.txt");
  }

  @Test
  void launchersHaveTheirVersionAndLineEnds() throws IOException {
    String version = home.getFileName().toString();
    String posix = Files.readString(home.resolve("bin/lynchet"));
    assertThat(posix).contains(version + "-java-").doesNotContain("\r", "${project");
    String windows = Files.readString(home.resolve("bin/lynchet.bat"));
    assertThat(windows).contains(version + "-java-").doesNotContain("${project");
    assertThat(windows.replace("\r\n", "")).doesNotContain("\n", "\r");
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }
}
