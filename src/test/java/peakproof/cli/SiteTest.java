package peakproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteTest {
  private static final String SAFE = "[a-z0-9]([a-z0-9-]*[a-z0-9])?\\.html";

  @TempDir private Path folder;

  @Test
  void namesAPageByThePlansFolder() throws IOException {
    assertThat(name("plans/tove/plan.yaml")).matches("tove-[0-9a-f]{8}\\.html");
    assertThat(name("plans/Inês Cardalho/plan.yaml")).matches("ines-cardalho-[0-9a-f]{8}\\.html");
    assertThat(name("plans/anna.yaml")).matches("anna-[0-9a-f]{8}\\.html");
    assertThat(name("plans/アンナ/plan.yaml")).matches("[0-9a-f]{8}\\.html");
  }

  @Test
  void namesItTheSameHoweverManyOthersThereAre() throws IOException {
    String alone = name("plans/tove/plan.yaml");
    Site site = Site.in(folder.resolve("many"));
    for (int i = 0; i < 100; i++) {
      site.write(Path.of("plans/tove" + i + "/plan.yaml"), "x");
    }
    assertThat(site.write(Path.of("./plans/tove/plan.yaml"), "x")).isEqualTo(alone);
  }

  @Test
  void neverGivesTwoPlansOnePage() throws IOException {
    Site site = Site.in(folder);
    Set<String> names = new HashSet<>();
    for (String plan : List.of("a/t/plan.yaml", "b/t/plan.yaml", "b/T/plan.yaml", "b/t.yaml")) {
      names.add(site.write(Path.of(plan), "page of " + plan));
    }
    assertThat(names).hasSize(4);
    String first = site.write(Path.of("twice/plan.yaml"), "one");
    String second = site.write(Path.of("twice/plan.yaml"), "two");
    assertThat(second).isNotEqualTo(first).endsWith("-2.html");
    assertThat(folder.resolve(first)).hasContent("one");
  }

  @Test
  void keepsOddNamesInsideTheFolder() throws IOException {
    Random chance = new Random(20270704);
    String odd = "ab ./\\<>\"'&:*?|%#\u202e\u00e9\u0130\u00df\u3042\ud83c\udfca-_~$`\n\t";
    int[] letters = odd.codePoints().toArray();
    Path inside = folder.resolve("site");
    Site site = Site.in(inside);
    Set<String> names = new HashSet<>();
    for (int i = 0; i < 500; i++) {
      StringBuilder path = new StringBuilder("plans/");
      for (int length = chance.nextInt(80); length > 0; length--) {
        path.appendCodePoint(letters[chance.nextInt(letters.length)]);
      }
      String name = site.write(Path.of(path + "/plan.yaml"), "page");
      assertThat(name).matches(SAFE).hasSizeLessThan(70);
      assertThat(names.add(name)).as(name).isTrue();
    }
    for (String plan :
        List.of("../../up/plan.yaml", "/etc/plan.yaml", "../plan.yaml", "/plan.yaml")) {
      assertThat(site.write(Path.of(plan), "page")).matches(SAFE);
    }
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactly(inside);
    }
    try (Stream<Path> all = Files.list(inside)) {
      assertThat(all).hasSize(504);
    }
    assertThat(site.left()).isEmpty();
  }

  private String name(String plan) throws IOException {
    return Site.in(folder).write(Path.of(plan), "page");
  }
}
