package peakproof.cli;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import peakproof.document.StreamedPlan;

/** The lines of a stream that say anything, one by one; of one that is too long nothing is kept. */
final class InputLines implements Iterator<InputLine> {
  private final InputStream in;
  private int number;
  private @Nullable InputLine next;

  InputLines(InputStream in) {
    this.in = new BufferedInputStream(in, 1 << 16);
  }

  @Override
  public boolean hasNext() {
    try {
      while (next == null) {
        int first = in.read();
        if (first < 0) {
          return false;
        }
        next = line(first);
      }
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The line that begins with a byte; null when it is blank. */
  private @Nullable InputLine line(int first) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    number++;
    boolean blank = true;
    boolean tooLong = false;
    for (int c = first; c >= 0 && c != '\n'; c = in.read()) {
      blank &= c == ' ' || c == '\t' || c == '\r';
      tooLong |= bytes.size() == StreamedPlan.BYTE_LIMIT;
      if (tooLong) {
        bytes.reset();
      } else {
        bytes.write(c);
      }
    }
    return blank ? null : new InputLine(number, tooLong ? null : bytes.toByteArray());
  }

  @Override
  public InputLine next() {
    InputLine line = hasNext() ? next : null;
    if (line == null) {
      throw new NoSuchElementException();
    }
    next = null;
    return line;
  }
}
