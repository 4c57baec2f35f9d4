package dev.flangewright.quality;

import dev.flangewright.people.Refused;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Why a piece can be lost, with what usually lies behind it and what keeps it from happening. */
@Entity
public class ScrapCause {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private int seq;
  private String code;
  private String name;
  private String usualReason;
  private String prevention;
  private String source;
  private boolean retired;

  protected ScrapCause() {}

  public ScrapCause(int seq, String code, String name, String usualReason, String prevention) {
    this.seq = seq;
    this.code = code;
    this.source = "entered here";
    write(name, usualReason, prevention);
  }

  /**
   * @throws Refused if the name is empty or a text too long
   */
  public void reads(String newName, String newReason, String newPrevention) {
    write(newName, newReason, newPrevention);
  }

  private void write(String newName, String newReason, String newPrevention) {
    this.name = text("name", newName, 1, 120);
    this.usualReason = text("usualReason", newReason, 0, 500);
    this.prevention = text("prevention", newPrevention, 0, 500);
  }

  /** A retired cause stays on old records and is not offered any more. */
  public void isRetired(boolean now) {
    this.retired = now;
  }

  private static String text(String field, String value, int least, int most) {
    String clean = value.strip();
    if (clean.length() < least || clean.length() > most) {
      throw Refused.unacceptable(field + " needs " + least + " to " + most + " characters.");
    }
    return clean;
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long version() {
    return version;
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

  public String usualReason() {
    return usualReason;
  }

  public String prevention() {
    return prevention;
  }

  public String source() {
    return source;
  }

  public boolean retired() {
    return retired;
  }
}
