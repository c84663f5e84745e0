package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.integration.program.Child;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.program.Tools;

/** The page of a comparison in a real browser. */
class ReportIT {
  private static final Pattern PAGE_OF_PDF = Pattern.compile("/Type\\s*/Page[^s]");

  @TempDir Path folder;

  @BeforeEach
  void writeThePage() throws Exception {
    Tools.assumeInstalled("chromium");
    ComparedExample.copyTo(folder);
    Program.jar().run(folder, ComparedExample.words("--report", "page.html")).outOrThrow();
  }

  private Run chromium(Path page, String... options) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(List.of("chromium", "--headless=new"));
    words.addAll(List.of("--no-sandbox", "--disable-gpu", "--allow-file-access-from-files"));
    words.addAll(List.of("--enable-logging=stderr", "--user-data-dir=" + folder.resolve("user")));
    words.addAll(List.of(options));
    words.add(page.toUri().toString());
    return Child.of(folder, words).withEnvironment("HOME", folder.toString()).run();
  }

  @Test
  void rendersWithoutErrors() throws Exception {
    Run run = chromium(folder.resolve("page.html"), "--dump-dom");
    assertThat(run.outOrThrow())
        .contains("<h1>Sandhill East: strips or blocks</h1>", "The map of rank 1", "</svg>");
    assertThat(run.err()).doesNotContain("CONSOLE");
  }

  @ParameterizedTest
  @ValueSource(strings = {"letter", "A4"})
  void printsOnTwoSheets(String paper) throws Exception {
    assertThat(sheets(paper)).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"letter", "A4"})
  void printsThreeCropsOnTwoSheets(String paper) throws Exception {
    ComparedExample.addThirdCropTo(folder);
    String[] words = ComparedExample.words("--report", "page.html", "--force");
    Program.jar().run(folder, words).outOrThrow();
    assertThat(Files.readString(folder.resolve("page.html"))).contains("12 rows sorghum 30 ft");
    assertThat(sheets(paper)).isEqualTo(2);
  }

  /** How many sheets of a paper the page is printed on. */
  private long sheets(String paper) throws Exception {
    String text = Files.readString(folder.resolve("page.html"));
    Path page = folder.resolve(paper + ".html");
    Files.writeString(page, text.replace("@page {", "@page { size: " + paper + ";"));
    Path pdf = folder.resolve(paper + ".pdf");
    chromium(page, "--no-pdf-header-footer", "--print-to-pdf=" + pdf);
    assertThat(pdf).isNotEmptyFile();
    String bytes = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    return PAGE_OF_PDF.matcher(bytes).results().count();
  }

  /** A frame of 390 px is as wide as a phone; a script beside the page measures it. */
  @ParameterizedTest
  @ValueSource(ints = {320, 360, 390, 400, 1200})
  void neitherScrollsSidewaysNorBreaksAWordOfAHeading(int width) throws Exception {
    Path frame = folder.resolve("frame.html");
    Files.writeString(
        frame,
        """
        <!DOCTYPE html><body><iframe id="f" src="page.html" style="width:%dpx"></iframe>
        <script>onload = () => {
          const page = document.getElementById("f").contentDocument;
          const root = page.documentElement;
          const broken = [];
          for (const heading of page.querySelectorAll("h1, h2, h3, thead th")) {
            const text = heading.firstChild;
            for (const word of text.data.matchAll(/[^\\s-]+/g)) {
              const range = page.createRange();
              range.setStart(text, word.index);
              range.setEnd(text, word.index + word[0].length);
              if (range.getClientRects().length > 1) broken.push(word[0]);
            }
          }
          document.title =
            "wide " + root.scrollWidth + " of " + root.clientWidth + " broken:" + broken.join();
        }</script>
        """
            .formatted(width));
    Run run = chromium(frame, "--dump-dom");
    var found =
        Pattern.compile("<title>wide (\\d+) of (\\d+) broken:(.*)</title>")
            .matcher(run.outOrThrow());
    assertThat(found.find()).as(run.toString()).isTrue();
    assertThat(found.group(1)).isEqualTo(found.group(2));
    assertThat(found.group(3)).isEmpty();
  }
}
