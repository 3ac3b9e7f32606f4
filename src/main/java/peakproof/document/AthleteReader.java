package peakproof.document;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Year;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads who a plan is for. */
final class AthleteReader {
  private final Desk desk;
  private final HealthReader health;

  AthleteReader(Desk desk) {
    this.desk = desk;
    this.health = new HealthReader(desk);
  }

  /** The athlete; null when the name is missing. */
  @Nullable Athlete read(Node node) {
    Fields fields = desk.fields(node, "the athlete");
    if (fields == null) {
      return null;
    }
    var name = fields.require("name", "Tove Lindqvist", Quantity.Of::new);
    Born born = born(fields);
    var sex = fields.read("sex", Vocabulary.SEX::read);
    var category = fields.read("category", Vocabulary.CATEGORY::read);
    var mass = fields.read("mass", Quantity::mass);
    Athlete.Experience experience = experience(fields);
    HeartRates rates = heartRates(fields);
    Fields swim = fields.mapping("swim", "'swim' of the athlete");
    var breathes = swim == null ? null : swim.read("breathes", Vocabulary.BREATHES::read);
    Fields bike = fields.mapping("bike", "'bike' of the athlete");
    var power = bike == null ? null : bike.read("critical-power", Quantity::power);
    var position = bike == null ? null : bike.read("position", Vocabulary.POSITION::read);
    finish(swim);
    finish(bike);
    var tests = desk.each(fields.list("tests"), new TestReader(desk)::read);
    Athlete.Available available = available(fields);
    Athlete.Lately lately = lately(fields);
    Athlete.Health healthEntries = health.read(fields);
    var sweatRates = desk.each(fields.list("sweat-rates"), health::sweatRate);
    Athlete.Para para = para(fields);
    fields.finish();
    return name == null
        ? null
        : new Athlete(
            fields.pointer(),
            name,
            born.year(),
            born.date(),
            sex,
            category,
            mass,
            experience,
            rates.maximum(),
            rates.resting(),
            breathes,
            power,
            position,
            tests,
            available,
            lately,
            healthEntries,
            sweatRates,
            para);
  }

  private static void finish(@Nullable Fields fields) {
    if (fields != null) {
      fields.finish();
    }
  }

  private record Born(@Nullable Year year, @Nullable LocalDate date) {}

  private static Born born(Fields fields) {
    Born born =
        fields.read(
            "born",
            text ->
                text.matches("(19|20)[0-9]{2}")
                    ? new Quantity.Of<>(new Born(Year.of(Integer.parseInt(text)), null))
                    : text.matches("[0-9]+")
                        ? new Quantity.NotThat<>(
                            "'" + text + "' is no year of birth",
                            "expected a year such as 1988, or a date",
                            "write four digits")
                        : Quantity.date(text).map(date -> new Born(null, date)));
    return Objects.requireNonNullElse(born, new Born(null, null));
  }

  private static Athlete.@Nullable Experience experience(Fields owner) {
    Fields fields = owner.mapping("experience", "'experience'");
    if (fields == null) {
      return null;
    }
    Athlete.Experience experience =
        new Athlete.Experience(
            fields.read("years", Quantity::number),
            fields.read("full", Quantity::count),
            fields.read("half", Quantity::count),
            fields.read("standard", Quantity::count),
            fields.read("sprint", Quantity::count));
    fields.finish();
    return experience;
  }

  private record HeartRates(@Nullable Double maximum, @Nullable Double resting) {}

  private HeartRates heartRates(Fields owner) {
    Fields fields = owner.mapping("heart-rate", "'heart-rate' of the athlete");
    if (fields == null) {
      return new HeartRates(null, null);
    }
    HeartRates rates =
        new HeartRates(
            fields.read("max", Quantity::heartRate), fields.read("resting", Quantity::heartRate));
    fields.finish();
    if (rates.maximum() != null && rates.resting() != null && rates.resting() >= rates.maximum()) {
      desk.fault(
          fields.keyPlace("resting"),
          "the resting heart rate is not below the highest",
          "expected resting below max",
          "check which is which");
    }
    return rates;
  }

  private Athlete.@Nullable Available available(Fields owner) {
    Fields fields = owner.mapping("available", "'available'");
    if (fields == null) {
      return null;
    }
    var hours = fields.read("hours", Quantity::duration);
    Set<DayOfWeek> daysOff = EnumSet.noneOf(DayOfWeek.class);
    daysOff.addAll(desk.each(fields.list("days-off"), item -> desk.value(item, Quantity::weekday)));
    var weekday = fields.read("weekday", Quantity::duration);
    fields.finish();
    return new Athlete.Available(hours, Collections.unmodifiableSet(daysOff), weekday);
  }

  private static Athlete.@Nullable Lately lately(Fields owner) {
    Fields fields = owner.mapping("lately", "'lately'");
    if (fields == null) {
      return null;
    }
    Athlete.Lately lately =
        new Athlete.Lately(
            fields.pointer(),
            fields.read("hours", Quantity::duration),
            fields.read("longest-ride", Quantity::duration),
            fields.read("longest-run", Quantity::duration),
            fields.read("longest-swim", Quantity::distance),
            fields.read("open-water", Quantity::date));
    fields.finish();
    return lately;
  }

  private static Athlete.@Nullable Para para(Fields owner) {
    Fields fields = owner.mapping("para", "'para'");
    if (fields == null) {
      return null;
    }
    Athlete.Para para =
        new Athlete.Para(
            fields.text("class"),
            fields.read("device", Vocabulary.DEVICE::read),
            fields.read("guide", Quantity::flag));
    fields.finish();
    return para;
  }
}
