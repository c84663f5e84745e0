package org.lynchet.formats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reads XML texts, and refuses those that reach outside or do not end. */
class XmlInputTest {

  @Test
  void elementsHaveTheirAttributesTextAndLine() throws FormatException {
    XmlElement root =
        read("\uFEFF<?xml version='1.0'?>\n<p:a xmlns:p='x' B='1'>\n<c> t </c></p:a>");
    assertThat(root.name()).isEqualTo("a");
    assertThat(root.attribute("B")).isEqualTo("1");
    assertThat(root.attribute("none")).isEmpty();
    assertThat(root.findChild("c").orElseThrow().text()).isEqualTo("t");
    assertThat(root.findChild("c").orElseThrow().line()).isEqualTo(3);
  }

  @Test
  void whatIsWrittenIsRead() throws FormatException {
    String text = "<\"&'> \t\n gruen \u00fc \ud83c\udf3d";
    XmlOutput out = new XmlOutput().start("a").attribute("b", text).attribute("none", "");
    out.element("c", "x & y").element("d", "name", "n", "z").end();
    XmlElement root = XmlInput.read(out.toBytes(), "a.xml");
    assertThat(root.attributes()).containsOnlyKeys("b").containsValue(text);
    assertThat(root.children()).extracting(XmlElement::text).containsExactly("x & y", "z");
  }

  /** Such bytes are refused before the JDK's reader prints them on standard error. */
  @Test
  void bytesThatAreNotTextAsDeclaredAreRefused() throws FormatException {
    byte[] latin =
        "<?xml version='1.0' encoding='utf-8'?>\n\n<a b='\u00fc'/>"
            .getBytes(StandardCharsets.ISO_8859_1);
    PrintStream before = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      FormatException refused =
          catchThrowableOfType(FormatException.class, () -> XmlInput.read(latin, "a.xml"));
      assertThat(refused.faults().get(0).what()).isEqualTo("bytes that are not text as declared");
      assertThat(refused.faults().get(0).where()).isEqualTo("a.xml");
    } finally {
      System.setErr(before);
    }
    assertThat(printed.toString(StandardCharsets.UTF_8)).isEmpty();
    byte[] told =
        "<?xml version='1.0' encoding='ISO-8859-1'?><a b='\u00fc'/>"
            .getBytes(StandardCharsets.ISO_8859_1);
    assertThat(XmlInput.read(told, "a.xml").attribute("b")).isEqualTo("\u00fc");
    byte[] wide = "<a b='\u00fc'/>".getBytes(StandardCharsets.UTF_16);
    assertThat(XmlInput.read(wide, "a.xml").attribute("b")).isEqualTo("\u00fc");
    assertThat(refused("<?xml version='1.0' encoding='none-such'?><a/>").what())
        .isEqualTo("an encoding that is not known");
  }

  /** An external entity, as in CWE-611: the file must not be opened, nor its text come back. */
  @Test
  void externalEntitiesAreRefused(@TempDir Path folder) throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
    Fault fault = refused("<!DOCTYPE a [<!ENTITY e SYSTEM '" + secret.toUri() + "'>]><a>&e;</a>");
    assertThat(fault.what()).contains("document type").doesNotContain("secret");
  }

  /** Entities that expand into each other, as in CWE-776. */
  @Test
  void entitiesThatExpandAreRefused() {
    assertThat(refused("<!DOCTYPE a [<!ENTITY b 'bb'><!ENTITY c '&b;&b;'>]><a>&c;</a>").what())
        .contains("document type");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "no xml", "<a>", "<a></b>", "<a b='<'/>", "<a/><b/>", "<a>&e;</a>"})
  void whatIsNotWellFormedIsRefusedWithItsLine(String text) {
    assertThat(refused(text).where()).startsWith("a.xml line 1");
  }

  @Test
  void depthIsLimited() {
    assertThat(refused("<a>".repeat(100_000)).what()).contains("too deep");
  }

  private static XmlElement read(String text) throws FormatException {
    return XmlInput.read(text.getBytes(StandardCharsets.UTF_8), "a.xml");
  }

  private static Fault refused(String text) {
    FormatException refused = catchThrowableOfType(FormatException.class, () -> read(text));
    assertThat(refused).as(text).isNotNull();
    return refused.faults().get(0);
  }
}
