package dev.flangewright.records.capture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.hibernate.metamodel.mapping.AttributeMapping;
import org.hibernate.persister.entity.EntityPersister;
import org.hibernate.proxy.HibernateProxy;
import org.hibernate.proxy.LazyInitializer;

/** What rows are called, as far as it is known without reading more of the database. */
final class Names {

  /** Fields that name a row, the most telling first. */
  private static final List<String> NAMING =
      List.of("partNumber", "username", "name", "code", "label");

  /** Fields that count a row among its like. */
  private static final List<String> COUNTING = List.of("number", "ordinal", "seq");

  private final SharedSessionContractImplementor session;

  Names(SharedSessionContractImplementor session) {
    this.session = session;
  }

  /** Its entity's name, as the program calls it: {@code PieceStage}. */
  String entity(EntityPersister rows) {
    return rows.getMappedClass().getSimpleName();
  }

  /** The same in words: {@code piece stage}. */
  String kind(EntityPersister rows) {
    return entity(rows).replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }

  EntityPersister rows(Object row) {
    return session.getEntityPersister(null, row);
  }

  /** The name of a row alone, without those that it belongs to; empty if it has none. */
  String own(EntityPersister rows, Object row) {
    return NAMING.stream()
        .flatMap(field -> value(rows, row, field).stream())
        .filter(value -> value instanceof String || value instanceof Enum<?>)
        .map(Object::toString)
        .findFirst()
        .or(() -> counted(rows, row))
        .orElse("");
  }

  private Optional<String> counted(EntityPersister rows, Object row) {
    return COUNTING.stream()
        .flatMap(field -> value(rows, row, field).stream())
        .map(number -> kind(rows) + " " + number)
        .findFirst();
  }

  static Optional<Object> value(EntityPersister rows, Object row, String field) {
    AttributeMapping attribute = rows.findAttributeMapping(field);
    return attribute == null ? Optional.empty() : Optional.ofNullable(attribute.getValue(row));
  }

  /** The id of a row that another one points at, and its name where it is at hand. */
  String reference(Object pointedAt) {
    String name = loaded(pointedAt).map(row -> own(rows(row), row)).orElse("");
    return Stream.of(id(pointedAt), name)
        .filter(text -> !text.isEmpty())
        .reduce((id, own) -> id + " (" + own + ")")
        .orElse("");
  }

  String id(Object row) {
    LazyInitializer proxy = HibernateProxy.extractLazyInitializer(row);
    return String.valueOf(
        proxy == null ? rows(row).getIdentifier(row, session) : proxy.getInternalIdentifier());
  }

  /** The row itself, if it has been read. */
  Optional<Object> loaded(Object row) {
    LazyInitializer proxy = HibernateProxy.extractLazyInitializer(row);
    if (proxy == null) {
      return Optional.of(row);
    }
    return proxy.isUninitialized() ? Optional.empty() : Optional.of(proxy.getImplementation());
  }
}
