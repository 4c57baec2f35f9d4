package dev.flangewright.people;

/**
 * Something that was asked for and cannot be done, with a sentence for the person who asked. Pages
 * show it beside the form; the API answers with the status of its kind.
 */
public class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** What sort of refusal this is. */
  public enum Kind {
    /** There is no such thing: status 404. */
    UNKNOWN,
    /** It clashes with what is there, or with the order of the work: status 409. */
    CONFLICT,
    /** The values cannot be taken: status 422. */
    UNACCEPTABLE
  }

  private final Kind kind;

  public Refused(Kind kind, String sentence) {
    super(sentence);
    this.kind = kind;
  }

  public static Refused unknown(String what, Object which) {
    return new Refused(Kind.UNKNOWN, "There is no " + what + " " + which + ".");
  }

  public static Refused conflict(String sentence) {
    return new Refused(Kind.CONFLICT, sentence);
  }

  public static Refused unacceptable(String sentence) {
    return new Refused(Kind.UNACCEPTABLE, sentence);
  }

  public Kind kind() {
    return kind;
  }
}
