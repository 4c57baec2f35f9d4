package dev.flangewright.bench;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** Which route is taken: by all parts of a nature, or by one part whatever its nature. */
@Entity
public class RouteChoice {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private long buildId;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private @Nullable PartNature nature;

  private @Nullable Long partId;
  private String routeName;

  protected RouteChoice() {}

  private RouteChoice(
      long buildId, @Nullable PartNature nature, @Nullable Long partId, String routeName) {
    this.buildId = buildId;
    this.nature = nature;
    this.partId = partId;
    this.routeName = routeName;
  }

  static RouteChoice of(long buildId, PartNature nature, String routeName) {
    return new RouteChoice(buildId, nature, null, routeName);
  }

  static RouteChoice ofPart(long buildId, long partId, String routeName) {
    return new RouteChoice(buildId, null, partId, routeName);
  }

  void isNow(String newRouteName) {
    this.routeName = newRouteName;
  }

  public long buildId() {
    return buildId;
  }

  public @Nullable PartNature nature() {
    return nature;
  }

  public @Nullable Long partId() {
    return partId;
  }

  public String routeName() {
    return routeName;
  }
}
