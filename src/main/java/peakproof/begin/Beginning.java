package peakproof.begin;

import java.util.List;

/** A kind of file that can be started. */
public interface Beginning {
  /** What has to be known, in the order in which it is asked. */
  List<Item> items();

  /** The file's text from checked and completed answers; with a fault, the reader's own words. */
  Draft draft(Answers answers);

  /** What came of the answers. */
  sealed interface Draft {
    /**
     * A file that is read without fault.
     *
     * @param remarks what to say of it, a line each
     */
    record Written(String text, List<String> remarks) implements Draft {}

    /** The answers do not make a file, and why. */
    record Refused(List<String> reasons) implements Draft {}
  }
}
