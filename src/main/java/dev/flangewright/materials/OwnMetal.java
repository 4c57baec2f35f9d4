package dev.flangewright.materials;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A certificate's values that a build has entered for an alloy and temper. They are never changed
 * or deleted: a change withdraws them and enters others.
 */
@Entity
public class OwnMetal {

  private static final String KNOWN_BY = "certificate";

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private long buildId;
  private String alloy;
  private String temper;
  private @Nullable Double fromThicknessMm;
  private @Nullable Double toThicknessMm;
  private String certificate;
  @Embedded private CertificateValues stated;
  private String enteredBy;
  private Instant enteredAt;
  private @Nullable String withdrawnBy;
  private @Nullable Instant withdrawnAt;

  protected OwnMetal() {}

  OwnMetal(long buildId, OwnMetalEntry entry, String who, Instant now) {
    this.buildId = buildId;
    this.alloy = entry.alloy();
    this.temper = entry.temper();
    this.fromThicknessMm = entry.fromThicknessMm();
    this.toThicknessMm = entry.toThicknessMm();
    this.certificate = entry.certificate();
    this.stated = entry.values();
    this.enteredBy = who;
    this.enteredAt = now;
  }

  void isWithdrawn(String who, Instant now) {
    this.withdrawnBy = who;
    this.withdrawnAt = now;
  }

  boolean isFor(String wantedAlloy, String wantedTemper, double thicknessMm) {
    return isSheet(wantedAlloy, wantedTemper) && reaches(thicknessMm, thicknessMm);
  }

  /** Whether both would answer for some sheet. */
  boolean overlaps(OwnMetalEntry entry) {
    return isSheet(entry.alloy(), entry.temper())
        && reaches(
            Objects.requireNonNullElse(entry.fromThicknessMm(), 0.0),
            Objects.requireNonNullElse(entry.toThicknessMm(), Double.MAX_VALUE));
  }

  private boolean isSheet(String wantedAlloy, String wantedTemper) {
    return alloy.equalsIgnoreCase(wantedAlloy) && temper.equalsIgnoreCase(wantedTemper);
  }

  private boolean reaches(double fromMm, double toMm) {
    return (fromThicknessMm == null || fromThicknessMm <= toMm)
        && (toThicknessMm == null || toThicknessMm >= fromMm);
  }

  /** The metal with the values stated here in place of the tables'; the others stay. */
  Metal over(Metal shipped) {
    Double ratio = stated.minBendRatio();
    return new Metal(
        shipped.alloy(),
        shipped.temper(),
        shipped.thicknessMm(),
        or(stated.densityKgM3(), shipped.densityKgM3()),
        or(stated.youngMpa(), shipped.youngMpa()),
        or(stated.proofMpa(), shipped.proofMpa()),
        or(stated.utsMpa(), shipped.utsMpa()),
        or(stated.elongationPercent(), shipped.elongationPct()),
        or(stated.uniformStrain(), shipped.uniformStrain()),
        or(stated.anisotropy(), shipped.anisotropy()),
        or(ratio == null ? null : ratio * shipped.thicknessMm(), shipped.minBendRadiusMm()));
  }

  private @Nullable Sourced or(@Nullable Double value, @Nullable Sourced otherwise) {
    return value == null ? otherwise : new Sourced(value, source(), KNOWN_BY);
  }

  /** The certificate, and who entered it when. */
  public String source() {
    return "certificate " + certificate + ", " + EntryText.entered(enteredBy, enteredAt);
  }

  /** Who withdrew the values and when; empty while they are in force. */
  public String withdrawal() {
    return withdrawnBy == null || withdrawnAt == null
        ? ""
        : EntryText.entered(withdrawnBy, withdrawnAt).replace("entered", "withdrawn");
  }

  /** Alloy and temper. */
  public String name() {
    return alloy + " " + temper;
  }

  /** The identity; set once the values are stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public long buildId() {
    return buildId;
  }

  public String alloy() {
    return alloy;
  }

  public String temper() {
    return temper;
  }

  public @Nullable Double fromThicknessMm() {
    return fromThicknessMm;
  }

  public @Nullable Double toThicknessMm() {
    return toThicknessMm;
  }

  public String certificate() {
    return certificate;
  }

  public CertificateValues stated() {
    return stated;
  }

  public boolean isWithdrawn() {
    return withdrawnAt != null;
  }

  public String enteredBy() {
    return enteredBy;
  }

  public Instant enteredAt() {
    return enteredAt;
  }
}
