package org.lynchet.integration.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Rules that cmd.exe has for lynchet.bat, held against its text: these tests do not run it, as that
 * takes Windows.
 */
class BatchFileIT {
  /** Variables that hold paths, in which an ampersand or a blank may be. */
  private static final Pattern PATHS =
      Pattern.compile("%(home|java|release|archive|making|JAVA_HOME|LOCALAPPDATA|~dp0)[%.]");

  private static final Pattern SUBSTITUTION = Pattern.compile("%(\\w+):[^~%][^%]*=[^%]*%");
  private static final Pattern GOTO = Pattern.compile("\\bgoto (\\w+)");

  @TempDir static Path folder;
  private static List<String> lines = List.of();
  private static byte[] bytes = {};

  @BeforeAll
  static void read() throws IOException {
    bytes = Files.readAllBytes(Distribution.unpack(folder).home().resolve("bin/lynchet.bat"));
    lines =
        new String(bytes, StandardCharsets.US_ASCII)
            .lines()
            .filter(line -> !line.startsWith("rem "))
            .toList();
  }

  /** Whatever the code page, and whatever cmd.exe makes of bare line feeds at labels. */
  @Test
  void asciiWithCarriageReturns() {
    for (int i = 0; i < bytes.length; i++) {
      assertThat(bytes[i]).as("byte %s", i).isBetween((byte) 10, (byte) 126);
      assertThat(bytes[i] == '\n').as("byte %s", i).isEqualTo(i > 0 && bytes[i - 1] == '\r');
    }
    assertThat(bytes[bytes.length - 1]).isEqualTo((byte) '\n');
  }

  /** Outside quotes an ampersand in a folder's name ends the command. */
  @Test
  void pathsStandInQuotes() {
    int seen = 0;
    for (String line : lines) {
      for (MatchResult path : (Iterable<MatchResult>) PATHS.matcher(line).results()::iterator) {
        long quotes = line.substring(0, path.start()).chars().filter(c -> c == '"').count();
        assertThat(quotes % 2).as(line).isEqualTo(1);
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(20);
  }

  /**
   * A line is expanded before it is looked at, and a substitution in a variable that is not defined
   * leaves its own text there: a guard has to be on a line before.
   */
  @Test
  void substitutionsAreGuardedBeforeTheirLine() {
    for (String line : lines) {
      Matcher substitution = SUBSTITUTION.matcher(line);
      while (substitution.find()) {
        assertThat(line).doesNotContain("if defined " + substitution.group(1) + " ");
      }
    }
    assertThat(lines)
        .containsSubsequence(
            "if not defined LYNCHET_JAVA_OPTS goto collected",
            "set \"options=%LYNCHET_JAVA_OPTS:\"=%\"",
            "if not defined options goto collected");
  }

  /** A parenthesis in a folder's name, as in Program Files (x86), would end a block. */
  @Test
  void noBlocks() {
    assertThat(lines).noneMatch(line -> line.endsWith("(") || line.startsWith(")"));
  }

  @Test
  void everyLabelIsThereOnce() {
    for (String line : lines) {
      Matcher jump = GOTO.matcher(line);
      while (jump.find()) {
        assertThat(lines).containsOnlyOnce(":" + jump.group(1));
      }
    }
  }

  /** On a line of its own, since %ERRORLEVEL% is what it was when its line began. */
  @Test
  void exitCodeOfTheProgramIsPassedOn() {
    List<String> runs = lines.stream().filter(line -> line.endsWith("lynchet.jar\" %*")).toList();
    assertThat(runs).hasSize(2).allMatch(line -> line.startsWith("\"%java%\" %flags% "));
    for (String run : runs) {
      assertThat(lines.get(lines.indexOf(run) + 1)).isEqualTo("exit /b %ERRORLEVEL%");
    }
    assertThat(lines.get(lines.size() - 1)).isEqualTo("exit /b %ERRORLEVEL%");
  }
}
