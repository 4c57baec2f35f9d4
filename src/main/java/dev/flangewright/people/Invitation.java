package dev.flangewright.people;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** Lets one person make an account of a role, once and for a short time. */
@Entity
public class Invitation {

  static final Duration GOOD_FOR = Duration.ofDays(3);

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @SuppressWarnings("UnusedVariable") // its column is what is searched by
  private String digest;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private Role role;

  private String madeBy;
  private Instant madeAt;
  private Instant expiresAt;
  private @Nullable Instant usedAt;
  private @Nullable String usedBy;
  private @Nullable Instant endedAt;

  protected Invitation() {}

  Invitation(Role role, Secret secret, String who, Instant now) {
    this.role = role;
    this.digest = secret.digest();
    this.madeBy = who;
    this.madeAt = now;
    this.expiresAt = now.plus(GOOD_FOR);
  }

  public boolean isOpen(Instant now) {
    return usedAt == null && endedAt == null && now.isBefore(expiresAt);
  }

  /** It has made this account and makes no other. */
  void isUsedBy(String username, Instant now) {
    usedBy = username;
    usedAt = now;
  }

  void end(Instant now) {
    if (endedAt == null) {
      endedAt = now;
    }
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  public Role role() {
    return role;
  }

  public String madeBy() {
    return madeBy;
  }

  public Instant madeAt() {
    return madeAt;
  }

  public Instant expiresAt() {
    return expiresAt;
  }

  /** The account that it made; null while it is not used. */
  public @Nullable String usedBy() {
    return usedBy;
  }
}
