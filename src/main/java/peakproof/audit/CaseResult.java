package peakproof.audit;

/**
 * What came of one case.
 *
 * @param text what is different from what the case asks for; empty when nothing is
 */
public record CaseResult(String rule, String name, boolean ok, String text) {}
