package peakproof.fact;

import java.util.List;

/**
 * An entry without which several rules stay silent.
 *
 * @param entry its key path, such as {@code athlete.born}
 */
public record MissingEntry(String entry, String pointer) implements Fact {
  @Override
  public List<Where> where() {
    return List.of(new Where(pointer, null, null));
  }
}
