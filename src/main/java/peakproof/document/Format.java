package peakproof.document;

/** The number of the format a document is written in. */
final class Format {
  private Format() {}

  /** Tells a fault unless the document says {@code format: 1}. */
  static void check(Fields fields) {
    fields.require(
        "format",
        "1",
        text ->
            text.equals("1")
                ? new Quantity.Of<>(text)
                : new Quantity.NotThat<>(
                    "'" + text + "' is a format this version does not know",
                    "expected format 1",
                    "write 'format: 1'"));
  }
}
