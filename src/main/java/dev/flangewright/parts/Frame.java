package dev.flangewright.parts;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A transverse ring of the hull at a datum position. */
@Entity
public class Frame {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Build build;

  private String code;
  private Written positionMm;
  private @Nullable Integer jigOrder;

  protected Frame() {}

  public Frame(Build build, String code, Written positionMm) {
    this.build = build;
    this.code = code;
    this.positionMm = positionMm;
  }

  public void isAt(Written newPositionMm) {
    this.positionMm = newPositionMm;
  }

  /** Says which frame the jig needs first, from 1; null if that does not matter. */
  public void isNeeded(@Nullable Integer newJigOrder) {
    this.jigOrder = newJigOrder;
  }

  /** The identity; set once the frame is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public Build build() {
    return build;
  }

  public String code() {
    return code;
  }

  /** Where the frame stands along the hull, from the datum, mm. */
  public Written positionMm() {
    return positionMm;
  }

  /** The jig needs it first if it is 1; null if nobody has said. */
  public @Nullable Integer jigOrder() {
    return jigOrder;
  }
}
