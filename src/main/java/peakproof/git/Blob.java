package peakproof.git;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * A file in a revision.
 *
 * @param name its content's name
 * @param path from the top of the repository, with slashes
 */
record Blob(String name, long size, String path) {
  private static final int FIELDS = 4;

  /** The plain files that git lists and somebody wants; links and other repositories are none. */
  static List<Blob> listed(byte[] listing, Predicate<Blob> wanted) {
    List<Blob> blobs = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < listing.length; i++) {
      if (listing[i] == 0) {
        Blob blob = of(text(listing, from, i));
        if (blob != null && wanted.test(blob)) {
          blobs.add(blob);
        }
        from = i + 1;
      }
    }
    return blobs;
  }

  /** {@code 100644 blob 9f2c… 1234<TAB>plans/tove/plan.yaml}. */
  private static @Nullable Blob of(@Nullable String entry) {
    int tab = entry == null ? -1 : entry.indexOf('\t');
    if (entry == null || tab < 0) {
      return null;
    }
    String[] fields = entry.substring(0, tab).split(" +", -1);
    return fields.length == FIELDS && fields[0].startsWith("100") && fields[1].equals("blob")
        ? new Blob(fields[2], Long.parseLong(fields[3]), entry.substring(tab + 1))
        : null;
  }

  /** A name that is no text is nothing a plan could be called by. */
  private static @Nullable String text(byte[] bytes, int from, int to) {
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(bytes, from, to - from))
          .toString();
    } catch (CharacterCodingException noText) {
      return null;
    }
  }
}
