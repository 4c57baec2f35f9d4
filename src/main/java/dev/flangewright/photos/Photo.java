package dev.flangewright.photos;

import dev.flangewright.people.Refused;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * A photo of a piece, an inspection or a block: everything about it but the picture itself ({@link
 * PhotoImage}). It is never deleted; taken off, it stays in the record with the reason.
 */
@Entity
public class Photo {

  private static final int LONGEST = 500;

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private SubjectKind subjectKind;

  private long subjectId;

  @SuppressWarnings("UnusedVariable") // what a build has is found by it
  private long buildId;

  private String who;
  private Instant receivedAt;
  private String caption;
  private int width;
  private int height;
  private String sha256;
  private @Nullable Instant takenOffAt;
  private @Nullable String takenOffBy;
  private @Nullable String takenOffWhy;

  protected Photo() {}

  /**
   * @throws Refused if the caption is too long
   */
  Photo(
      SubjectKind kind,
      long subjectId,
      long buildId,
      TakenPhoto taken,
      String caption,
      String who,
      Instant now) {
    this.subjectKind = kind;
    this.subjectId = subjectId;
    this.buildId = buildId;
    this.width = taken.width();
    this.height = taken.height();
    this.sha256 = taken.sha256();
    this.caption = words("caption", caption);
    this.who = who;
    this.receivedAt = now;
  }

  /** Takes it from the pages; the record keeps it. */
  void takeOff(String by, Instant now, String why) {
    if (isTakenOff()) {
      throw Refused.conflict("The photo was taken off already, by " + takenOffBy + ".");
    }
    String clean = words("reason", why);
    if (clean.isEmpty()) {
      throw Refused.unacceptable("reason is missing: say why the photo is taken off.");
    }
    takenOffAt = now;
    takenOffBy = by;
    takenOffWhy = clean;
  }

  private static String words(String field, String typed) {
    String clean = typed.strip();
    if (clean.length() > LONGEST) {
      throw Refused.unacceptable(field + " may have at most " + LONGEST + " characters.");
    }
    return clean;
  }

  /** The identity; set once it is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public SubjectKind subjectKind() {
    return subjectKind;
  }

  public long subjectId() {
    return subjectId;
  }

  public String who() {
    return who;
  }

  public Instant receivedAt() {
    return receivedAt;
  }

  /** Empty if nothing was said. */
  public String caption() {
    return caption;
  }

  /** Of the full size, in pixels. */
  public int width() {
    return width;
  }

  /** Of the full size, in pixels. */
  public int height() {
    return height;
  }

  /** Of the file as it came in, in hexadecimal. */
  public String sha256() {
    return sha256;
  }

  public boolean isTakenOff() {
    return takenOffAt != null;
  }

  public @Nullable Instant takenOffAt() {
    return takenOffAt;
  }

  public @Nullable String takenOffBy() {
    return takenOffBy;
  }

  public @Nullable String takenOffWhy() {
    return takenOffWhy;
  }
}
