package peakproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Random;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import peakproof.Golden;
import peakproof.audit.Audit;
import peakproof.rule.Severity;

class JunitReportTest {
  private static final Path XSD = Path.of("src/test/resources/junit-xml/jenkins-junit.xsd");

  @Test
  void keepsItsNamesAndShape() throws Exception {
    String xml = xml(Severity.HOLD, false, 1, judged(Sample.runa()));
    read(xml);
    Golden.assertMatches("report/runa.junit.xml", xml);
  }

  @Test
  void countsWhatItHolds() throws Exception {
    for (Severity bar : Severity.values()) {
      Document read = read(xml(bar, true, 1, judged(Sample.runa())));
      Element suite = (Element) read.getElementsByTagName("testsuite").item(0);
      assertThat(suite.getAttribute("tests")).isEqualTo(count(read, "testcase"));
      assertThat(suite.getAttribute("failures")).isEqualTo(count(read, "failure"));
      assertThat(suite.getAttribute("skipped")).isEqualTo(count(read, "skipped"));
    }
  }

  @Test
  void failsFromTheBarOn() throws Exception {
    assertThat(count(read(xml(Severity.HOLD, true, 1, judged(Sample.runa()))), "failure"))
        .isEqualTo("1");
    assertThat(count(read(xml(Severity.FIX, true, 1, judged(Sample.runa()))), "failure"))
        .isEqualTo("3");
    assertThat(count(read(xml(Severity.NOTE, true, 1, judged(Sample.runa()))), "failure"))
        .isEqualTo("6");
  }

  @Test
  void tellsWhatAHealthEntrySaysOnlyWhenAsked() {
    assertThat(xml(Severity.HOLD, false, 1, judged(Sample.runa())))
        .doesNotContain("achilles", "run-pain-rule")
        .contains("<testcase name=\"health-entry\"");
    assertThat(xml(Severity.HOLD, true, 1, judged(Sample.runa()))).contains("left achilles");
  }

  @Test
  void isAnErrorWhenAPlanWasNotAuditedOrARuleCouldNotRun() throws Exception {
    Judged broken = new Judged(Sample.runa(), false);
    assertThat(count(read(xml(Severity.HOLD, false, 3, broken)), "error")).isEqualTo("2");
  }

  @Test
  void isValidWhateverADocumentSays() throws Exception {
    Random random = new Random(4);
    for (int i = 0; i < 300; i++) {
      Document read = read(xml(Severity.NOTE, false, 1, judged(Hostile.audit(random))));
      assertThat(count(read, "failure")).isEqualTo("1");
      assertThat(count(read, "testcase")).isEqualTo("4");
    }
  }

  private static String count(Document read, String name) {
    return String.valueOf(read.getElementsByTagName(name).getLength());
  }

  private static Judged judged(Audit audit) {
    return new Judged(audit, true);
  }

  private static String xml(Severity bar, boolean withHealth, int plans, Judged... judged) {
    Layout usual = Hostile.layout(withHealth);
    Layout layout =
        new Layout(
            usual.choice(),
            usual.width(),
            usual.ink(),
            bar,
            withHealth,
            usual.program(),
            usual.rules());
    StringWriter out = new StringWriter();
    Written.by(new JunitReport(out, layout), plans, judged);
    return out.toString();
  }

  private static Document read(String xml) throws Exception {
    Schema schema =
        SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(XSD.toFile());
    schema.newValidator().validate(new StreamSource(new StringReader(xml)));
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)));
  }
}
