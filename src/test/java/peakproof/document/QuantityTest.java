package peakproof.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {
  private static final Map<String, Function<String, Quantity<Double>>> KINDS =
      Map.ofEntries(
          Map.entry("duration", Quantity::duration),
          Map.entry("clock", Quantity::clock),
          Map.entry("distance", Quantity::distance),
          Map.entry("pace", Quantity::pace),
          Map.entry("heart-rate", Quantity::heartRate),
          Map.entry("power", Quantity::power),
          Map.entry("rating", Quantity::rating),
          Map.entry("mass", Quantity::mass),
          Map.entry("volume", Quantity::volume),
          Map.entry("fluid", Quantity::fluidRate),
          Map.entry("carbohydrate", Quantity::carbohydrateRate),
          Map.entry("milligrams", Quantity::milligrams),
          Map.entry("temperature", Quantity::temperature),
          Map.entry("speed", Quantity::speed),
          Map.entry("share", Quantity::share),
          Map.entry("length", Quantity::length),
          Map.entry("thickness", Quantity::thickness),
          Map.entry("number", Quantity::number));

  private static Quantity<Double> read(String kind, String text) {
    return Objects.requireNonNull(KINDS.get(kind)).apply(text);
  }

  // Conversions by the international yard, pound, mile and foot (1959) and the US fluid ounce.
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "duration, 45s, 45",
    "duration, 12min, 720",
    "duration, 1h, 3600",
    "duration, 1h30, 5400",
    "duration, 2h05, 7500",
    "duration, 1h10min30s, 4230",
    "duration, 1:10:00, 4200",
    "duration, 1.5h, 5400",
    "duration, 90min, 5400",
    "duration, 1h 30min, 5400",
    "duration, 12 min, 720",
    "clock, 6:28, 388",
    "clock, 1:41:30, 6090",
    "clock, 6:28.5, 388.5",
    "clock, 75:30, 4530",
    "clock, 2h05, 7500",
    "distance, 400m, 400",
    "distance, 3.8km, 3800",
    "distance, 13mi, 20921.472",
    "distance, 1500yd, 1371.6",
    "distance, marathon, 42195",
    "distance, half-marathon, 21097.5",
    "distance, 42.2km, 42195",
    "distance, 21.1km, 21097.5",
    "distance, 26.2mi, 42195",
    "distance, 13.1mi, 21097.5",
    "distance, 42.1km, 42100",
    "pace, 1:50/100m, 1.1",
    "pace, 1:41/100yd, 1.104549",
    "pace, 4:55/km, 0.295",
    "pace, 8:00/mi, 0.298258",
    "heart-rate, 131bpm, 131",
    "power, 205W, 205",
    "rating, 6, 6",
    "rating, 6.5, 6.5",
    "rating, 0, 0",
    "rating, 10, 10",
    "mass, 71kg, 71",
    "mass, 137lb, 62.142155",
    "volume, 1.1l, 1.1",
    "volume, 750ml, 0.75",
    "volume, 0l, 0",
    "volume, 20floz, 0.591471",
    "fluid, 650ml/h, 0.65",
    "fluid, 20floz/h, 0.591471",
    "fluid, 0.6l/h, 0.6",
    "carbohydrate, 75g/h, 75",
    "milligrams, 180mg, 180",
    "temperature, 17.5C, 17.5",
    "temperature, 64F, 17.777778",
    "temperature, -5C, -5",
    "temperature, 32F, 0",
    "speed, 4m/s, 4",
    "speed, 10mph, 4.4704",
    "speed, 36km/h, 10",
    "share, 60%, 0.6",
    "share, 100%, 1",
    "length, 1250m, 1250",
    "length, 4100ft, 1249.68",
    "thickness, 5mm, 5",
    "number, 2.5, 2.5",
  })
  void readsAmounts(String kind, String text, double value) {
    assertThat(Objects.requireNonNull(read(kind, text).orNull())).isCloseTo(value, within(1e-6));
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "duration | 2:05 | write 2h05 or 2min05s",
        "duration | 30:00 | write 30h or 30min",
        "duration | 1h5 | write 1h05 or 1h50",
        "duration | 90 | write 90min or 90h",
        "duration | 90m | write 90min",
        "duration | 2 hours | write 2h",
        "duration | 45sec | write 45s",
        "duration | 1h75 | write hours, minutes and seconds as h, min and s",
        "duration | 12min90s | write hours, minutes and seconds as h, min and s",
        "duration | 0min | write an amount above zero, or leave it out",
        "duration | -5min | write hours, minutes and seconds as h, min and s",
        "clock | 120 | write 120s or 120min",
        "clock | 6:75 | write hours, minutes and seconds as h, min and s",
        "distance | 3,8km | write metres as m, kilometres as km, and a point for decimals",
        "distance | 400 | write 400m",
        "distance | 2.5 | write 2.5km or 2.5m",
        "clock | 6.28 | write 6:28",
        "distance | 0km | write an amount above zero, or leave it out",
        "pace | 1:50 | write 1:50/100m or 1:50/km",
        "pace | 1:75/km | write minutes:seconds/distance",
        "heart-rate | 131 | write 131bpm",
        "heart-rate | 131 BPM | write 131bpm",
        "power | 205w | write 205W",
        "power | 0W | write an amount above zero, or leave the line out",
        "rating | 11 | write digits, with a point for decimals",
        "rating | 6.3 | write digits, with a point for decimals",
        "rating | 6,5 | write 6.5",
        "rating | 7/10 | write the number alone",
        "mass | 62 | write 62kg",
        "mass | 10stone | write it in kg or lb",
        "mass | heavy | write a number and its unit",
        "temperature | 17,5C | write 17.5C",
        "temperature | 17.5°C | write 17.5C",
        "share | 160% | write a share of up to 100%",
        "volume | -1l | write an amount from zero",
      })
  void saysWhatToWriteInstead(String kind, String text, String instead) {
    assertThat(((Quantity.NotThat<Double>) read(kind, text)).instead()).isEqualTo(instead);
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "SWIM | 400 | Distance[metres=400.0]",
        "SWIM | 3.8km | Distance[metres=3800.0]",
        "SWIM | 30min | Time[seconds=1800.0]",
        "RUN | half-marathon | Distance[metres=21097.5]",
        "BIKE | 4h30 | Time[seconds=16200.0]",
        "STRENGTH | 15min | Time[seconds=900.0]",
        "RUN | 5m | did you mean 5min?",
        "BIKE | 0.05km | write a duration",
        "RUN | 400 | write 400m",
        "RUN | 40 | write 40min or 40km",
        "RUN | half-maraton | did you mean 'half-marathon'?",
        "RUN | far | begin the part with a number",
        "RUN | 5parsecs | write m, km, mi or yd after a distance, h, min or s after a duration",
        "STRENGTH | 15 | write 15min",
        "STRENGTH | 3km | write its minutes first, such as 'strength: 40min', and the rest in 'note'",
        "BIKE | 2:05 | write 2h05 or 2min05s",
      })
  void readsAmountsOfASport(Sport sport, String text, String result) {
    Quantity<SetLine.Work> amount = Quantity.amount(text, sport, false);
    assertThat(
            amount instanceof Quantity.NotThat<SetLine.Work> not
                ? not.instead()
                : Objects.requireNonNull(amount.orNull()).toString())
        .isEqualTo(result);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "131bpm | HeartRate[bpm=131.0]",
        "70%maxhr | ShareOfMaximum[share=0.7]",
        "65%hrr | ShareOfReserve[share=0.65]",
        "205W | Power[watts=205.0]",
        "85%cp | ShareOfCriticalPower[share=0.85]",
        "120%cp | ShareOfCriticalPower[share=1.2]",
        "rpe6.5 | Rating[rating=6.5]",
        "4:10/km | Pace[secondsPerMetre=0.25]",
        "70% | write maxhr, hrr or cp after the '%'",
        "170%maxhr | write one of these",
        "131 | write its unit: 131bpm or 131W",
        "rpe12 | write digits, with a point for decimals",
        "fast | write one of these",
      })
  void readsTargets(String text, String result) {
    Quantity<Target> target = Quantity.target(text);
    assertThat(
            target instanceof Quantity.NotThat<Target> not
                ? not.instead()
                : Objects.requireNonNull(target.orNull()).toString())
        .isEqualTo(result);
  }

  @Test
  void readsDatesAndTimes() {
    assertThat(Quantity.date("2027-06-12").orNull()).isEqualTo(LocalDate.of(2027, 6, 12));
    assertThat(Quantity.time("06:30").orNull()).isEqualTo(LocalTime.of(6, 30));
    assertThat(Quantity.dateTime("2027-07-02T14:00").orNull())
        .isEqualTo(LocalDate.of(2027, 7, 2).atTime(14, 0));
    assertThat(Quantity.weekday("wed").orNull()).isEqualTo(DayOfWeek.WEDNESDAY);
    assertThat(instead(Quantity.date("2027-02-30")))
        .isEqualTo("check month and day in the calendar");
    assertThat(instead(Quantity.date("12.06.2027"))).isEqualTo("write year-month-day");
    assertThat(instead(Quantity.date("2027-6-12"))).isEqualTo("write two digits for month and day");
    assertThat(instead(Quantity.time("6:30"))).isEqualTo("write 06:30");
    assertThat(instead(Quantity.time("24:00")))
        .isEqualTo("write hours and minutes, 00:00 to 23:59");
    assertThat(instead(Quantity.dateTime("2027-07-02")))
        .isEqualTo("add the time: 2027-07-02T14:00");
    assertThat(instead(Quantity.weekday("Monday"))).isEqualTo("write mon");
    assertThat(instead(Quantity.weekday("tus"))).isEqualTo("did you mean 'tue'?");
  }

  @Test
  void readsFlagsAndCounts() {
    assertThat(Quantity.flag("yes").orNull()).isTrue();
    assertThat(Quantity.flag("false").orNull()).isFalse();
    assertThat(instead(Quantity.flag("on"))).isEqualTo("write yes");
    assertThat(instead(Quantity.flag("YES"))).isEqualTo("did you mean 'yes'?");
    assertThat(Quantity.count("012").orNull()).isEqualTo(12);
    assertThat(Quantity.signed("-6").orNull()).isEqualTo(-6);
    assertThat(instead(Quantity.count("3.5"))).isEqualTo("write digits only");
  }

  @Test
  void findsTheNearestWord() {
    List<String> known = List.of("swim", "bike", "run", "strength", "other");
    assertThat(Nearest.among("swm", known)).isEqualTo("swim");
    assertThat(Nearest.among("siwm", known)).isEqualTo("swim");
    assertThat(Nearest.among("Bike", known)).isEqualTo("bike");
    assertThat(Nearest.among("strenght", known)).isEqualTo("strength");
    assertThat(Nearest.among("swimming", known)).isEqualTo("swim");
    assertThat(Nearest.among("stre", known)).isEqualTo("strength");
    assertThat(Nearest.among("yoga", known)).isNull();
    assertThat(Nearest.among("", known)).isNull();
  }

  private static String instead(Quantity<?> quantity) {
    return ((Quantity.NotThat<?>) quantity).instead();
  }
}
