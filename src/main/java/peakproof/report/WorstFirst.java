package peakproof.report;

import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Pages that wait until all are there, because the worst plan comes first. */
final class WorstFirst implements Closeable {
  private final Spill texts = new Spill();
  private final List<Page> pages = new ArrayList<>();

  private record Page(Rank rank, Spill.Piece text) {}

  void add(Rank rank, String text) throws IOException {
    pages.add(new Page(rank, texts.add(text)));
  }

  boolean isEmpty() {
    return pages.isEmpty();
  }

  /** Of all pages, the worst first. */
  List<Rank> ranks() {
    return pages.stream().map(Page::rank).sorted().toList();
  }

  /** Writes the pages, the worst first, each with {@code after} behind it. */
  void writeTo(Writer out, String after) throws IOException {
    for (Page page : pages.stream().sorted(Comparator.comparing(Page::rank)).toList()) {
      out.write(texts.get(page.text()));
      out.write(after);
    }
  }

  @Override
  public void close() throws IOException {
    texts.close();
  }
}
