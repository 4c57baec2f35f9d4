package dev.flangewright.people;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
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

  @ElementCollection(fetch = FetchType.EAGER)
  @CollectionTable(name = "account_clearance", joinColumns = @JoinColumn(name = "account_id"))
  @Column(name = "clearance")
  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private Set<Clearance> clearances = new HashSet<>();

  protected Account() {}

  Account(String username, Role role, String passwordHash, Instant now) {
    this.username = username;
    this.role = role;
    this.passwordHash = passwordHash;
    this.enabled = true;
    this.createdAt = now;
    isClearedFor(role.clearances());
  }

  /** Takes a role with what it is usually cleared for. */
  void becomes(Role newRole) {
    this.role = newRole;
    isClearedFor(newRole.clearances());
  }

  void isClearedFor(Set<Clearance> now) {
    clearances.retainAll(now);
    clearances.addAll(now);
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

  public Set<Clearance> clearances() {
    return Set.copyOf(clearances);
  }

  public String clearedInWords() {
    return Clearance.inWords(clearances);
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
