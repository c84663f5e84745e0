package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was written is opened again. */
class PdfFileTest {
  @TempDir Path folder;

  private static Sheet sheet() {
    Sheet sheet = new Sheet();
    sheet.text("corn", Sheet.MARGIN, 100, 12);
    return sheet;
  }

  @Test
  void whatIsWholeHasNoDifferences() throws IOException {
    Path file = folder.resolve("a.pdf");
    assertThat(PdfFile.writeAndCheck("a", List.of(sheet(), sheet()), file)).isEmpty();
  }

  @Test
  void missingAndEmptyPagesAreSeen() throws IOException {
    Path file = folder.resolve("a.pdf");
    PdfFile.write("a", List.of(sheet(), new Sheet()), file);
    assertThat(PdfFile.differences(List.of(sheet()), file))
        .containsExactly("a.pdf: 2 pages in place of 1", "a.pdf: a page without text");
  }

  @Test
  void damageIsSeen() throws IOException {
    Path file = folder.resolve("a.pdf");
    PdfFile.write("a", List.of(sheet()), file);
    byte[] bytes = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(bytes, 40));
    assertThat(PdfFile.differences(List.of(sheet()), file))
        .singleElement()
        .asString()
        .startsWith("a.pdf: ");
    Files.write(file, new byte[0]);
    assertThat(PdfFile.differences(List.of(sheet()), file)).hasSize(1);
  }
}
