package dev.flangewright.heat;

/** Why the clock is not stopped in the freezer. */
public enum ClockRuns {
  /** It stands still, or the piece is not in the freezer. */
  NOT,
  /** Frozen later after the quench than the table allows, time out of the freezer counted. */
  FROZEN_LATE,
  /** The freezer is warmer than any row of the table. */
  TOO_WARM
}
