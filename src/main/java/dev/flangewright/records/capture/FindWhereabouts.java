package dev.flangewright.records.capture;

import dev.flangewright.records.Chains;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Function;
import org.hibernate.metamodel.mapping.AttributeMapping;
import org.hibernate.metamodel.mapping.internal.ToOneAttributeMapping;
import org.hibernate.persister.entity.EntityPersister;
import org.jspecify.annotations.Nullable;

/**
 * Finds where a row belongs by the way the entities point at each other, so that a new entity need
 * not say it: a row belongs to the build that it names ({@code buildId} or {@code build}), or else
 * to that of the row it cannot be without.
 */
final class FindWhereabouts {

  private static final String BUILD = "build";
  private static final String BUILD_ID = "buildId";
  private static final String PART_NUMBER = "partNumber";

  private final Names names;
  private final Function<Object, Optional<Object>> read;
  private final Deque<String> label = new ArrayDeque<>();
  private @Nullable String chain;
  private @Nullable String part;

  /**
   * @param read reads a row that another points at; empty if that cannot be done now
   */
  FindWhereabouts(Names names, Function<Object, Optional<Object>> read) {
    this.names = names;
    this.read = read;
  }

  /** Empty if a row on the way could not be read. */
  Optional<Whereabouts> of(Object row) {
    Optional<Object> at = Optional.of(row);
    while (at.isPresent() && part == null) {
      EntityPersister rows = names.rows(at.get());
      visit(rows, at.get());
      Optional<Object> owner = owner(rows, at.get());
      at = owner.flatMap(read);
      if (owner.isPresent() && at.isEmpty() && part == null) {
        return Optional.empty();
      }
    }
    return Optional.of(
        new Whereabouts(
            chain == null ? Chains.INSTALLATION : chain, String.join(", ", label), part));
  }

  private void visit(EntityPersister rows, Object row) {
    String own = names.own(rows, row);
    if (!own.isEmpty()) {
      label.addFirst(own);
    }
    if (chain == null) {
      chain = build(rows, row).map(Chains::ofBuild).orElse(null);
    }
    part = Names.value(rows, row, PART_NUMBER).map(Object::toString).orElse(null);
  }

  private Optional<Long> build(EntityPersister rows, Object row) {
    return Names.value(rows, row, BUILD_ID)
        .map(Object::toString)
        .or(() -> Names.value(rows, row, BUILD).map(names::id))
        .map(Long::valueOf);
  }

  private static Optional<Object> owner(EntityPersister rows, Object row) {
    Optional<AttributeMapping> association = association(rows);
    return association.map(attribute -> attribute.getValue(row));
  }

  /** The first association that a row cannot be without, the build left out. */
  static Optional<AttributeMapping> association(EntityPersister rows) {
    for (int i = 0; i < rows.getNumberOfAttributeMappings(); i++) {
      AttributeMapping attribute = rows.getAttributeMapping(i);
      if (attribute instanceof ToOneAttributeMapping
          && !attribute.getAttributeMetadata().isNullable()
          && !attribute.getAttributeName().equals(BUILD)) {
        return Optional.of(attribute);
      }
    }
    return Optional.empty();
  }
}
