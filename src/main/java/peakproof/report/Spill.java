package peakproof.report;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Texts put aside without taking memory: the first few stay in it, the rest go to a temporary file
 * that only its owner may read, since it holds health entries, and that is gone once it is closed
 * or the program ends.
 */
final class Spill implements Closeable {
  private static final int KEPT = 1 << 20;

  private byte[] kept = new byte[0];
  private @Nullable FileChannel file;
  private int inMemory;
  private long inFile;

  /**
   * Where a text lies.
   *
   * @param at counted in bytes; those of the file come after those in memory
   */
  record Piece(long at, int length) {}

  Piece add(String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (inFile == 0 && inMemory + bytes.length <= KEPT) {
      if (inMemory + bytes.length > kept.length) {
        kept = Arrays.copyOf(kept, Math.min(KEPT, 2 * (inMemory + bytes.length)));
      }
      System.arraycopy(bytes, 0, kept, inMemory, bytes.length);
      inMemory += bytes.length;
      return new Piece((long) inMemory - bytes.length, bytes.length);
    }
    ByteBuffer rest = ByteBuffer.wrap(bytes);
    while (rest.hasRemaining()) {
      inFile += file().write(rest, inFile);
    }
    return new Piece(inMemory + inFile - bytes.length, bytes.length);
  }

  String get(Piece piece) throws IOException {
    if (piece.at() < inMemory) {
      return new String(kept, (int) piece.at(), piece.length(), StandardCharsets.UTF_8);
    }
    ByteBuffer bytes = ByteBuffer.allocate(piece.length());
    while (bytes.hasRemaining()) {
      if (file().read(bytes, piece.at() - inMemory + bytes.position()) < 0) {
        throw new EOFException("the temporary file is cut short");
      }
    }
    return new String(bytes.array(), StandardCharsets.UTF_8);
  }

  private FileChannel file() throws IOException {
    if (file == null) {
      Path path = Files.createTempFile("peakproof", ".part");
      file =
          FileChannel.open(
              path,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE);
    }
    return file;
  }

  @Override
  public void close() throws IOException {
    if (file != null) {
      file.close();
    }
  }
}
