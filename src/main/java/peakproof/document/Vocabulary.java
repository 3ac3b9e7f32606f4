package peakproof.document;

/** The closed word lists of the documents. */
final class Vocabulary {
  static final Words DISTANCE = Words.of("a distance class", "full", "half", "standard", "sprint");
  static final Words WATER = Words.of("a kind of water", "lake", "sea", "river", "pool");
  static final Words DIRECTION =
      Words.of("a direction of the swim course", "clockwise", "anticlockwise", "straight", "both");
  static final Words WETSUIT =
      Words.of("a wetsuit rule", "allowed", "forbidden", "required", "by-temperature");
  static final Words START = Words.of("a kind of start", "mass", "wave", "rolling");
  static final Words SWIM_CONDITIONS =
      Words.of("a condition of the swim", "chop", "low-sun", "current");
  static final Words BIKE_COURSE =
      Words.of("a shape of the bike course", "closed-loop", "out-and-back", "point-to-point");
  static final Words RUN_SURFACE =
      Words.of("a surface of the run", "road", "gravel", "trail", "track");
  static final Words RULE_BOOK = Words.of("a rule book", "world-triathlon", "own");
  static final Words EDITION = Words.of("an edition of the rule book", "older", "later");

  static final Words SEX = Words.of("a sex the formulas know", "female", "male");
  static final Words CATEGORY = Words.of("a category", "age-group", "elite", "para");
  static final Words BREATHES = Words.of("a side to breathe to", "left", "right", "both");
  static final Words POSITION = Words.of("a position on the bike", "aero", "drops", "hoods");
  static final Words CONDITIONS =
      Words.of(
          "a condition listed in the format",
          "asthma",
          "beta-blocker",
          "diabetes",
          "heart",
          "high-blood-pressure",
          "pregnant",
          "post-partum",
          "gut",
          "other");
  static final Words DEVICE = Words.of("a device", "wheelchair", "handcycle", "prosthesis", "none");

  static final Words PRESET =
      Words.of(
          "a preset",
          "by-athlete",
          "short-course",
          "first-timer",
          "masters",
          "experienced",
          "default");
  static final Words FOCUS =
      Words.of("a focus of a week", "build", "peak", "taper", "lighter", "camp");
  static final Words WITHOUT =
      Words.of(
          "a sport that can be declared missing", "swim", "open-water", "bike", "run", "strength");
  static final Words AWAY = Words.of("a reason to be away", "travel", "illness", "work");
  static final Words MEDICINE =
      Words.of("a kind of medicine", "prescribed", "painkiller", "anti-inflammatory");
  static final Words CHANGE =
      Words.of(
          "a change of equipment",
          "saddle",
          "cleats",
          "crank",
          "bars",
          "position",
          "wheels",
          "tyres",
          "helmet",
          "shoes");
  static final Words AIM = Words.of("an aim", "weight-loss");

  static final Words WHERE =
      Words.of(
          "a place to train",
          "pool",
          "open-water",
          "road",
          "trainer",
          "track",
          "trail",
          "treadmill",
          "gravel",
          "gym",
          "home");
  static final Words COMPANY = Words.of("a company", "alone", "group", "supervised");
  static final Words LIGHT = Words.of("a light", "day", "dusk", "dark");
  static final Words TRAFFIC = Words.of("a traffic", "quiet", "busy", "closed");
  static final Words GROUND = Words.of("a surface of a session", "dry", "wet");
  static final Words WARNING =
      Words.of("a warning", "lightning", "gale", "ice", "smoke", "water-quality");
  static final Words STRENGTH_FOR =
      Words.of(
          "a purpose of strength work", "core", "balance", "light-weights", "legs", "upper-body");
  static final Words LOAD = Words.of("a load", "light", "moderate", "heavy");
  static final Words RACED = Words.of("a way to race", "full", "controlled");
  static final Words PURPOSE = Words.of("a purpose", "back-to-back");
  static final Words PRODUCTS = Words.of("a choice of products", "race");
  static final Words SOURCES = Words.of("a source of carbohydrate", "glucose", "fructose");
  static final Words KIT =
      Words.of(
          "a kit word",
          "wetsuit",
          "race-bike",
          "race-clothing",
          "race-shoes",
          "race-wheels",
          "race-helmet",
          "paddles",
          "fins",
          "pull-buoy");
  static final Words PRACTISE =
      Words.of(
          "a skill",
          "sighting",
          "fast-start",
          "contact",
          "both-sides",
          "buoy-turns",
          "transition",
          "warm-up",
          "wetsuit-strip",
          "descending",
          "underwater");

  static final Words PAIN_WHEN =
      Words.of("a time of pain", "running", "cycling", "swimming", "rest", "night");
  static final Words NEXT_MORNING = Words.of("a way to be next morning", "better", "same", "worse");
  static final Words PAIN_SIGNS =
      Words.of("a sign of injury", "limp", "swelling", "point-tender", "bone");
  static final Words ILL_SIGNS =
      Words.of(
          "a sign of illness",
          "sore-throat",
          "runny-nose",
          "cough",
          "chest",
          "aches",
          "vomiting",
          "palpitations",
          "froth",
          "tight-chest",
          "breathless-in-water");
  static final Words ILLNESS = Words.of("a kind of illness", "cold", "virus", "stomach", "other");
  static final Words MISSED =
      Words.of("a reason to miss a session", "illness", "work", "travel", "closed", "other");
  static final Words SEVERITY = Words.of("a severity", "HOLD", "FIX", "ASK", "NOTE");

  private Vocabulary() {}
}
