package peakproof.report;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes a piece of XML 1.0, without its declaration; characters it may not hold become �. */
final class Xml {
  private static final XMLOutputFactory FACTORY = XMLOutputFactory.newDefaultFactory();

  private final XMLStreamWriter writer;

  private Xml(XMLStreamWriter writer) {
    this.writer = writer;
  }

  /** Writes what is inside. */
  @FunctionalInterface
  interface Inside {
    void write(Xml xml) throws XMLStreamException;
  }

  static String of(Inside inside) {
    StringWriter text = new StringWriter();
    try {
      Xml xml = new Xml(FACTORY.createXMLStreamWriter(text));
      inside.write(xml);
      xml.writer.flush();
    } catch (XMLStreamException impossible) {
      throw new IllegalStateException(impossible);
    }
    return text.toString();
  }

  /** An element on a line of its own. */
  void element(int depth, String name, Inside inside) throws XMLStreamException {
    line(depth);
    writer.writeStartElement(name);
    inside.write(this);
    writer.writeEndElement();
  }

  void line(int depth) throws XMLStreamException {
    writer.writeCharacters("\n" + "  ".repeat(depth));
  }

  /** An attribute, which is one line. */
  void attribute(String name, Object value) throws XMLStreamException {
    writer.writeAttribute(name, legal(Printable.of(String.valueOf(value))));
  }

  void text(String text) throws XMLStreamException {
    writer.writeCharacters(legal(String.join("\n", text.lines().map(Printable::of).toList())));
  }

  /** {@code Char} of XML 1.0; controls and halves of pairs are gone already. */
  private static String legal(String text) {
    return text.replace('\ufffe', '\ufffd').replace('\uffff', '\ufffd');
  }
}
