package dev.flangewright.heat;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.time.Instant;

/** That the lead lets a piece be formed past its window, and why. */
@Embeddable
class LateForming {

  @Column(name = "late_at")
  private Instant at;

  @Column(name = "late_by")
  private String who;

  @Column(name = "late_why")
  private String why;

  @Column(name = "late_received_at")
  private Instant receivedAt;

  protected LateForming() {}

  LateForming(Told by) {
    this.at = by.at();
    this.who = by.who();
    this.why = by.note();
    this.receivedAt = by.receivedAt();
  }

  Told told() {
    return new Told(who, at, why, receivedAt);
  }

  /** {@code lead, because "…"} */
  String said() {
    return "%s, because “%s”".formatted(who, why);
  }
}
