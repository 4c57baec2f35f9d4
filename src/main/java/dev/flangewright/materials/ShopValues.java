package dev.flangewright.materials;

import dev.flangewright.forming.Practice;
import dev.flangewright.forming.ShopValue;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The shop values of a build, each with its source.
 *
 * @param own those that the build has in place of the defaults
 */
public record ShopValues(Map<ShopValue, Sourced> own) {

  /** The defaults throughout. */
  public static final ShopValues DEFAULT = new ShopValues(Map.of());

  static ShopValues of(List<ShopValueEntry> inForce) {
    return new ShopValues(
        inForce.stream()
            .filter(entry -> entry.amount() != null)
            .collect(Collectors.toMap(ShopValueEntry::name, ShopValueEntry::sourced)));
  }

  /** What to compute with. */
  public Practice practice() {
    return new Practice(
        own.entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue().value())));
  }

  public boolean isOwn(ShopValue which) {
    return own.containsKey(which);
  }

  /** The value in force, with its source or that it has none. */
  public Sourced of(ShopValue which) {
    Sourced ours = own.get(which);
    return ours == null ? new Sourced(which.byDefault(), which.standing(), "default") : ours;
  }
}
