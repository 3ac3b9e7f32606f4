package peakproof.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import peakproof.audit.Pliable.Spot;

/**
 * One way to spoil a dossier. What a later one needs stands in it after all earlier ones; the last
 * two leave no shape to rely on.
 */
enum Mutation {
  SCALE_A_SESSION {
    @Override
    void apply(PliableDossier it, Random random) {
      List<Spot> spots = it.spots(spot -> SPORTS.contains(spot.key()) && text(spot));
      Spot spot = pick(spots, random);
      spot.set(scaled((String) spot.value(), pick(List.of(0.5, 1.1, 1.3, 2.0), random)));
    }
  },
  SWAP_A_UNIT {
    @Override
    void apply(PliableDossier it, Random random) {
      List<Spot> spots =
          it.spots(spot -> text(spot) && UNIT.matcher((String) spot.value()).matches());
      Spot spot = pick(spots, random);
      Matcher read = UNIT.matcher((String) spot.value());
      if (read.matches()) {
        spot.set(read.group(1) + OTHER_UNIT.get(read.group(2)));
      }
    }
  },
  STRIP_A_TAG {
    @Override
    void apply(PliableDossier it, Random random) {
      String tag = pick(TAGS, random);
      it.spots(spot -> spot.key().equals(tag)).forEach(spot -> spot.map().remove(tag));
    }
  },
  DELETE_A_SPORT {
    @Override
    void apply(PliableDossier it, Random random) {
      String sport = pick(SPORTS, random);
      List<List<Object>> days = it.days();
      int from = random.nextInt(days.size());
      int to = Math.min(days.size(), from + 3 + random.nextInt(20));
      days.subList(from, to)
          .forEach(day -> day.removeIf(item -> Pliable.map(item).containsKey(sport)));
    }
  },
  SHIFT_A_DAY {
    @Override
    void apply(PliableDossier it, Random random) {
      List<List<Object>> days = it.days();
      int from = random.nextInt(days.size());
      int to = Math.floorMod(from + random.nextInt(15) - 7, days.size());
      List<Object> moved = new ArrayList<>(days.get(from));
      days.get(from).clear();
      days.get(from).addAll(days.get(to));
      days.get(to).clear();
      days.get(to).addAll(moved);
    }
  },
  COPY_A_DAY {
    @Override
    void apply(PliableDossier it, Random random) {
      List<List<Object>> days = it.days();
      int from = random.nextInt(days.size() - 1);
      days.get(from).forEach(item -> days.get(from + 1).add(Pliable.copy(item)));
    }
  },
  REPEAT_A_WEEK {
    @Override
    void apply(PliableDossier it, Random random) {
      List<Object> weeks = it.weeks();
      Map<String, Object> from = Pliable.map(pick(weeks, random));
      Map<String, Object> to = Pliable.map(pick(weeks, random));
      for (String key : List.of("days", "like", "but")) {
        Object value = from.get(key);
        if (value == null) {
          to.remove(key);
        } else {
          to.put(key, Pliable.copy(value));
        }
      }
    }
  },
  REST_OR_NOTHING {
    @Override
    void apply(PliableDossier it, Random random) {
      Map<String, Object> days = it.logDays();
      String day = pick(List.copyOf(days.keySet()), random);
      if (random.nextBoolean()) {
        days.remove(day);
      } else {
        days.put(day, Pliable.read("rest: yes"));
      }
    }
  },
  FALL_ILL_OR_HURT {
    @Override
    void apply(PliableDossier it, Random random) {
      Map<String, Object> days = it.logDays();
      Map<String, Object> day = Pliable.map(days.get(pick(List.copyOf(days.keySet()), random)));
      Spot sign =
          pick(
              SIGNS.stream().map(text -> Pliable.spots(Pliable.read(text)).get(0)).toList(),
              random);
      day.put(sign.key(), sign.value());
    }
  },
  AROUND_MIDNIGHT {
    @Override
    void apply(PliableDossier it, Random random) {
      List<Object> day = pick(it.days().stream().filter(d -> !d.isEmpty()).toList(), random);
      Pliable.map(pick(day, random)).put("at", pick(List.of("23:45", "00:05", "02:30"), random));
    }
  },
  ANOTHER_DAY {
    @Override
    void apply(PliableDossier it, Random random) {
      it.move(random.nextInt(75) - 40);
    }
  },
  ANOTHER_ATHLETE {
    @Override
    void apply(PliableDossier it, Random random) {
      Map<String, Object> athlete = Pliable.map(it.plan().get("athlete"));
      athlete.put("sex", "female".equals(athlete.get("sex")) ? "male" : "female");
      athlete.put("born", String.valueOf(1945 + random.nextInt(70)));
    }
  },
  DROP_AN_ENTRY {
    @Override
    void apply(PliableDossier it, Random random) {
      Spot spot = pick(it.spots(any -> true), random);
      spot.map().remove(spot.key());
    }
  },
  EXCHANGE_TWO_VALUES {
    @Override
    void apply(PliableDossier it, Random random) {
      Spot one = pick(it.spots(any -> true), random);
      Spot other = pick(it.spots(spot -> spot.key().equals(one.key())), random);
      Object value = one.value();
      one.set(Pliable.copy(other.value()));
      other.set(Pliable.copy(value));
    }
  };

  private static final List<String> SPORTS = List.of("swim", "bike", "run", "strength");
  private static final List<String> TAGS =
      List.of(
          "kit",
          "practise",
          "company",
          "where",
          "fuel",
          "aero",
          "water",
          "purpose",
          "rpe",
          "time",
          "heart-rate",
          "power",
          "distance",
          "morning",
          "focus",
          "then",
          "load",
          "for",
          "health");
  private static final List<String> SIGNS =
      List.of(
          "ill: {signs: [aches], fever: yes, kind: virus}",
          "ill: {signs: [chest], fever: no, kind: other}",
          "pain: [{site: left shin, level: 6, when: running}]",
          "morning: {sleep: 4h30, fatigue: 9, mood: 2}");
  private static final Pattern UNIT =
      Pattern.compile("(\\d+(?:\\.\\d+)?)(km|m|C|min|h|kg|l|g/h|ml/h)");
  private static final Map<String, String> OTHER_UNIT =
      Map.of(
          "km", "mi", "m", "yd", "C", "F", "min", "h", "h", "min", "kg", "lb", "l", "ml", "g/h",
          "mg/h", "ml/h", "l/h");
  private static final Pattern AMOUNT =
      Pattern.compile("(?<![x@\\d:.])\\d+(?=min|km|h\\b)|\\d{3,}");

  abstract void apply(PliableDossier it, Random random);

  /** The text with every amount of time or way in it multiplied. */
  static String scaled(String text, double factor) {
    return AMOUNT
        .matcher(text)
        .replaceAll(amount -> String.valueOf(Math.round(Long.parseLong(amount.group()) * factor)));
  }

  private static boolean text(Spot spot) {
    return spot.value() instanceof String;
  }

  static <T> T pick(List<T> all, Random random) {
    return all.get(random.nextInt(all.size()));
  }
}
