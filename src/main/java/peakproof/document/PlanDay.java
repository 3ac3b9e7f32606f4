package peakproof.document;

import java.util.List;

/**
 * One written day of a plan.
 *
 * @param at JSON pointer of the day as written, which in a {@code like} week is the first one's
 * @param rest true when the day says {@code rest: yes}
 * @param warnings lightning, gale, ice, smoke, water-quality
 */
public record PlanDay(String at, boolean rest, List<String> warnings, List<Session> sessions) {}
