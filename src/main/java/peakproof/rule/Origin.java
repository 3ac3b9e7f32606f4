package peakproof.rule;

import peakproof.document.Place;

/**
 * Who said something of a rule, and where.
 *
 * @param by in a word or two: {@code shipped card}, {@code house}, {@code plan}
 */
public record Origin(String by, Place place) {}
