package peakproof.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import peakproof.report.RosterPage;

/**
 * A folder of pages: one for each plan and one that leads to them, each whole or not at all, the
 * leading one last. What else lies there is left alone.
 */
final class Site {
  private static final String INDEX = "index.html";
  private static final int LONGEST_STEM = 40;
  private static final int HASH = 8;
  private static final Pattern OURS = Pattern.compile("[a-z0-9-]*-?[0-9a-f]{8}(-[0-9]+)?\\.html");

  private final Path folder;
  private final Set<String> names = new HashSet<>();

  private Site(Path folder) {
    this.folder = folder;
  }

  /** The site of a folder, which is made when there is none. */
  static Site in(Path folder) throws IOException {
    Files.createDirectories(folder);
    return new Site(folder);
  }

  /** True when a page leads into this folder that no roster wrote. */
  boolean isForeign() throws IOException {
    Path index = folder.resolve(INDEX);
    return Files.exists(index)
        && !(Files.isRegularFile(index)
            && new String(Files.readAllBytes(index), StandardCharsets.UTF_8)
                .contains(RosterPage.SIGN));
  }

  /** Writes a plan's page; its file's name. */
  String write(Path plan, String page) throws IOException {
    String name = name(plan);
    write(name, page);
    return name;
  }

  /** Writes the page that leads to the others. */
  void finish(String index) throws IOException {
    write(INDEX, index);
  }

  /** Pages of other runs, which nothing leads to now. */
  List<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> String.valueOf(file.getFileName()))
          .filter(name -> OURS.matcher(name).matches() && !names.contains(name))
          .sorted()
          .toList();
    }
  }

  private void write(String name, String page) throws IOException {
    try (Output file = Output.to(folder.resolve(name))) {
      file.writer().write(page);
      file.finish();
    }
  }

  /**
   * The same for the same plan as long as its path is given the same way: what the folder is called
   * in plain letters, and a hash of the whole path, since letters are lost. Two plans never share
   * one.
   */
  private String name(Path plan) {
    String path = plan.normalize().toString().replace('\\', '/');
    String hash =
        UUID.nameUUIDFromBytes(path.getBytes(StandardCharsets.UTF_8)).toString().substring(0, HASH);
    String stem = stem(plan);
    String base = stem.isEmpty() ? hash : stem + "-" + hash;
    String name = base + ".html";
    for (int again = 2; !names.add(name); again++) {
      name = base + "-" + again + ".html";
    }
    return name;
  }

  private static String stem(Path plan) {
    String file = String.valueOf(plan.getFileName());
    Path parent = plan.toAbsolutePath().normalize().getParent();
    Path called = parent == null ? null : parent.getFileName();
    String name = file.equals("plan.yaml") && called != null ? called.toString() : file;
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceFirst("\\.ya?ml$", "")
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-");
    String cut = plain.substring(0, Math.min(plain.length(), LONGEST_STEM));
    return cut.replaceAll("^-+|-+$", "");
  }
}
