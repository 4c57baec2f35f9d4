package dev.flangewright.bench;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * One stage of a build's route. A piece takes a copy of the route when it begins, so a change here
 * never rewrites what was done.
 */
@Entity
public class RouteStage {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private long buildId;
  private int seq;
  private String code;
  private String name;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private StageKind kind;

  private @Nullable String holdCheck;
  private int flangesNeeded;

  protected RouteStage() {}

  /**
   * @param code lower-case letters, digits and dashes; unique in the route
   * @param holdCheck what must be checked before the stage can be passed; null if it is no hold
   *     point
   * @param flangesNeeded the stage is left out for parts with fewer flanges
   */
  public RouteStage(
      long buildId,
      int seq,
      String code,
      String name,
      StageKind kind,
      @Nullable String holdCheck,
      int flangesNeeded) {
    this.buildId = buildId;
    this.seq = seq;
    this.code = code;
    this.name = name;
    this.kind = kind;
    this.holdCheck = holdCheck;
    this.flangesNeeded = flangesNeeded;
  }

  void standsAt(int newSeq) {
    this.seq = newSeq;
  }

  void reads(String newName, StageKind newKind, @Nullable String newHoldCheck, int needed) {
    this.name = newName;
    this.kind = newKind;
    this.holdCheck = newHoldCheck;
    this.flangesNeeded = needed;
  }

  boolean appliesTo(int flanges) {
    return flanges >= flangesNeeded;
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public long buildId() {
    return buildId;
  }

  public int seq() {
    return seq;
  }

  public String code() {
    return code;
  }

  public String name() {
    return name;
  }

  public StageKind kind() {
    return kind;
  }

  public @Nullable String holdCheck() {
    return holdCheck;
  }

  public int flangesNeeded() {
    return flangesNeeded;
  }
}
