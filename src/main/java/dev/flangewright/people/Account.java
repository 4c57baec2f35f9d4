package dev.flangewright.people;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** Somebody who may sign in. The password is kept only as a hash. */
@Entity
public class Account {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private String username;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private Role role;

  private String passwordHash;
  private boolean enabled;
  private Instant createdAt;

  protected Account() {}

  Account(String username, Role role, String passwordHash, Instant now) {
    this.username = username;
    this.role = role;
    this.passwordHash = passwordHash;
    this.enabled = true;
    this.createdAt = now;
  }

  void becomes(Role newRole) {
    this.role = newRole;
  }

  void takesPassword(String newHash) {
    this.passwordHash = newHash;
  }

  void isEnabled(boolean now) {
    this.enabled = now;
  }

  public @Nullable Long id() {
    return id;
  }

  public String username() {
    return username;
  }

  public Role role() {
    return role;
  }

  String passwordHash() {
    return passwordHash;
  }

  public boolean enabled() {
    return enabled;
  }

  public Instant createdAt() {
    return createdAt;
  }
}
