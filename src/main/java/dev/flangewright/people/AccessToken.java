package dev.flangewright.people;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Lets a program in under an account's name, until it expires or is ended. */
@Entity
public class AccessToken {

  /** Uses this close together are noted once. */
  private static final Duration NOTED_EVERY = Duration.ofMinutes(10);

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @ManyToOne(fetch = FetchType.LAZY, optional = false)
  private Account account;

  private String name;

  @SuppressWarnings("UnusedVariable") // its column is what is searched by
  private String digest;

  private boolean mayChange;
  private Instant madeAt;
  private Instant expiresAt;
  private @Nullable Instant lastUsedAt;
  private @Nullable Instant endedAt;

  protected AccessToken() {}

  AccessToken(Account account, TokenPlan plan, Secret secret, Instant now) {
    this.account = account;
    this.name = plan.name();
    this.digest = secret.digest();
    this.mayChange = plan.mayChange();
    this.madeAt = now;
    this.expiresAt = now.plus(Duration.ofDays(plan.days()));
  }

  /** Whether it lets anybody in: not expired, not ended, and its account is not closed. */
  public boolean isGood(Instant now) {
    return endedAt == null && now.isBefore(expiresAt) && account.enabled();
  }

  void end(Instant now) {
    if (endedAt == null) {
      endedAt = now;
    }
  }

  boolean isUseWorthNoting(Instant now) {
    return lastUsedAt == null || lastUsedAt.plus(NOTED_EVERY).isBefore(now);
  }

  void isUsed(Instant now) {
    lastUsedAt = now;
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  public Account account() {
    return account;
  }

  public String name() {
    return name;
  }

  /**
   * Whether a program may change records with it, as far as the account may; else it only reads.
   */
  public boolean mayChange() {
    return mayChange;
  }

  public Instant madeAt() {
    return madeAt;
  }

  public Instant expiresAt() {
    return expiresAt;
  }

  public @Nullable Instant lastUsedAt() {
    return lastUsedAt;
  }

  public @Nullable Instant endedAt() {
    return endedAt;
  }
}
