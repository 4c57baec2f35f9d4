package dev.flangewright.people;

import java.util.Set;
import java.util.stream.Stream;

/** Permissions and clearances under the names by which the security framework knows them. */
final class Authorities {

  private Authorities() {}

  static String[] of(Set<Permission> permissions, Set<Clearance> clearances) {
    return Stream.concat(
            permissions.stream().map(Enum::name), clearances.stream().map(Clearance::authority))
        .toArray(String[]::new);
  }
}
