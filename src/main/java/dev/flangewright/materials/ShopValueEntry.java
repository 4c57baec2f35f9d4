package dev.flangewright.materials;

import dev.flangewright.forming.Practice;
import dev.flangewright.forming.ShopValue;
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
 * A build sets a shop value, or goes back to the default. Entries are added and never taken away;
 * the latest of a value counts.
 */
@Entity
public class ShopValueEntry {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;

  @SuppressWarnings("UnusedVariable") // read by queries alone
  private long buildId;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private ShopValue name;

  private int ordinal;
  private @Nullable Double amount;
  private String source;
  private String reason;
  private String enteredBy;
  private Instant enteredAt;

  protected ShopValueEntry() {}

  private ShopValueEntry(
      long buildId, ShopValue name, int ordinal, String reason, String who, Instant now) {
    this.buildId = buildId;
    this.name = name;
    this.ordinal = ordinal;
    this.source = "";
    this.reason = reason;
    this.enteredBy = who;
    this.enteredAt = now;
  }

  /**
   * @throws dev.flangewright.forming.FormingException if the amount is out of its range
   * @throws dev.flangewright.people.Refused if the source is missing or a text too long
   */
  static ShopValueEntry own(
      long buildId, ShopValue name, int ordinal, OwnShopValue own, String who, Instant now) {
    Practice.check(name, own.amount());
    String reason = EntryText.of("reason", own.reason(), 0, 500);
    ShopValueEntry entry = new ShopValueEntry(buildId, name, ordinal, reason, who, now);
    entry.amount = own.amount();
    entry.source = EntryText.of("source", own.source(), 1, 300);
    return entry;
  }

  /**
   * @throws dev.flangewright.people.Refused if the reason is missing or too long
   */
  static ShopValueEntry backToDefault(
      long buildId, ShopValue name, int ordinal, String reason, String who, Instant now) {
    return new ShopValueEntry(
        buildId, name, ordinal, EntryText.of("reason", reason, 1, 500), who, now);
  }

  Sourced sourced() {
    return new Sourced(Objects.requireNonNull(amount), source + ", " + entered(), "own value");
  }

  /** Who entered it and when. */
  public String entered() {
    return EntryText.entered(enteredBy, enteredAt);
  }

  public ShopValue name() {
    return name;
  }

  public int ordinal() {
    return ordinal;
  }

  /** The value; null where the build went back to the default. */
  public @Nullable Double amount() {
    return amount;
  }

  public String source() {
    return source;
  }

  public String reason() {
    return reason;
  }
}
