package peakproof.cli;

/** What is written of rules. */
enum ListFormat {
  TEXT,
  JSON
}
