package peakproof.fact;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A plan that has little of what the cards need, and some of it only in part. */
class NeedsTest {
  private static final String WEEK =
      """
      race-day: {caffeine: 180mg}
      weeks:
        - {starts: 2027-05-31, days: {mon: [{run: 40min easy}], tue: [{swim: 2000 easy}]}}
      """;
  private static final String PLAN = Timelines.plan("{name: Lena Brandl, mass: 62kg}", WEEK);

  @ParameterizedTest
  @EnumSource(Need.class)
  void givesTheAnswerOfTheNeedHoweverOftenItIsAsked(Need need) {
    Facts facts = facts(PLAN);
    boolean met = need.met(facts);
    boolean everywhere = need.metEverywhere(facts);
    for (int times = 0; times < 2; times++) {
      assertThat(facts.needs().met(need)).isEqualTo(met);
      assertThat(facts.needs().metEverywhere(need)).isEqualTo(everywhere);
    }
  }

  @Test
  void aNeedMayBeMetWithoutBeingMetEverywhere() {
    Needs needs = facts(PLAN).needs();
    assertThat(needs.met(Need.CAFFEINE_FOR)).isTrue();
    assertThat(needs.metEverywhere(Need.CAFFEINE_FOR)).isFalse();
    assertThat(needs.met(Need.CAFFEINE_FOR)).isTrue();
  }

  @Test
  void aNeedMayBeMetEverywhereItIsAskedWithoutBeingMet() {
    Needs needs = facts(PLAN).needs();
    assertThat(needs.metEverywhere(Need.RACE_WATER)).isTrue();
    assertThat(needs.met(Need.RACE_WATER)).isFalse();
    assertThat(needs.metEverywhere(Need.RACE_WATER)).isTrue();
  }

  @Test
  void oneNeedIsNotTakenForAnother() {
    Needs needs = facts(PLAN).needs();
    assertThat(needs.met(Need.RACE_SWIM)).isTrue();
    assertThat(needs.met(Need.RACE_WETSUIT)).isFalse();
  }

  @Test
  void whatOnePlanHasIsNothingToAnother() {
    assertThat(facts(PLAN).needs().met(Need.GOAL_RUN)).isFalse();
    Facts withGoal = facts(Timelines.plan("goal: {run: 1:50:00}\n" + WEEK));
    assertThat(withGoal.needs().met(Need.GOAL_RUN)).isTrue();
    assertThat(facts(PLAN).needs().met(Need.GOAL_RUN)).isFalse();
  }

  @Test
  void aPlanKeepsItsNeeds() {
    Facts facts = facts(PLAN);
    assertThat(facts.needs()).isSameAs(facts.needs());
  }

  private static Facts facts(String plan) {
    return Timelines.facts(plan, null, "2027-05-30");
  }
}
