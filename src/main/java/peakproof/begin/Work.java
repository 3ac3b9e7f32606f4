package peakproof.begin;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A session as it is written.
 *
 * @param line the sport and its set line, such as {@code run: 40min easy}
 * @param keys what else is written of it
 * @param next what follows straight after
 */
record Work(String line, List<Key> keys, @Nullable Work next) {
  /** A key with its value as written. */
  record Key(String name, String value) {}

  Work(String line, List<Key> keys) {
    this(line, keys, null);
  }

  static Work of(String sport, String line) {
    return new Work(sport + ": " + line, List.of());
  }

  Work with(String name, String value) {
    return new Work(
        line, Stream.concat(keys.stream(), Stream.of(new Key(name, value))).toList(), next);
  }

  Work then(Work following) {
    return new Work(line, keys, following);
  }

  /** Writes it as an item of a day's list. */
  void write(StringBuilder text, String indent) {
    text.append(indent).append("- ").append(line).append('\n');
    writeRest(text, indent + "  ");
  }

  private void writeRest(StringBuilder text, String indent) {
    keys.forEach(
        key ->
            text.append(indent).append(key.name()).append(": ").append(key.value()).append('\n'));
    if (next != null) {
      if (next.keys().isEmpty() && next.next() == null && !next.line().contains(",")) {
        text.append(indent).append("then: {").append(next.line()).append("}\n");
        return;
      }
      text.append(indent).append("then:\n");
      text.append(indent).append("  ").append(next.line()).append('\n');
      next.writeRest(text, indent + "  ");
    }
  }
}
