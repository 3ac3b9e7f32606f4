package peakproof.document;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Water temperatures by which wetsuits are forbidden or mandatory and swims shortened, as rule
 * books print them.
 */
public record WaterTable(List<Edition> editions) {

  /**
   * One edition of one rule book.
   *
   * @param name as an event names it
   * @param authority whose rules they are
   * @param source where the numbers come from, and which of them are from memory
   */
  public record Edition(
      String name, String authority, String source, List<Row> rows, List<Shortened> shortened) {}

  /**
   * Swims of a category up to a length.
   *
   * @param upTo metres, included
   * @param forbiddenAbove °C
   * @param mandatoryBelow °C
   * @param limitSeconds longest time in the water; null where none is known
   */
  public record Row(
      String category,
      double upTo,
      double forbiddenAbove,
      double mandatoryBelow,
      @Nullable Double limitSeconds) {}

  /**
   * Water in which less is swum.
   *
   * @param from °C, included
   * @param below °C, not included
   * @param longest metres; zero for no swim, null where the event decides
   */
  public record Shortened(double from, double below, @Nullable Double longest) {}

  /** The table, or null, and what is wrong with its file. */
  public record Read(@Nullable WaterTable table, List<Fault> faults) {}

  /** Reads a table's file. */
  public static Read read(YamlTree.Parsed parsed) {
    return WaterTableReader.read(parsed);
  }
}
