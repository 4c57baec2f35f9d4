package dev.flangewright.parts;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One restoration. */
@Entity
public class Build {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private String name;
  private String note;
  private String registerStyle;
  private String contoursStyle;
  private Instant createdAt;

  protected Build() {}

  Build(String name, String note, Instant now) {
    this.name = name;
    this.note = note;
    this.registerStyle = "";
    this.contoursStyle = "";
    this.createdAt = now;
  }

  void isNamed(String newName, String newNote) {
    this.name = newName;
    this.note = newNote;
  }

  /** Remembers how the imported files were written, so that an export is written alike. */
  public void filesAreWritten(String ofRegister, String ofContours) {
    this.registerStyle = ofRegister;
    this.contoursStyle = ofContours;
  }

  /** The identity; set once the build is stored. */
  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
  }

  public String name() {
    return name;
  }

  public String note() {
    return note;
  }

  public String registerStyle() {
    return registerStyle;
  }

  public String contoursStyle() {
    return contoursStyle;
  }

  public Instant createdAt() {
    return createdAt;
  }
}
