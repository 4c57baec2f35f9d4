package dev.flangewright.parts.exchange;

/** Told now and then how far an import has come. */
@FunctionalInterface
public interface Progress {

  /** For callers that do not want to know. */
  Progress UNSEEN = (doing, done, of) -> {};

  /**
   * @param doing the step, as "Reading contours.csv"
   * @param done how much of it is done, from 0 to {@code of}
   * @param of the whole step
   */
  void at(String doing, long done, long of);
}
