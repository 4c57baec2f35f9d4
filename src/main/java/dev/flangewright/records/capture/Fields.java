package dev.flangewright.records.capture;

import dev.flangewright.records.FieldChange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.hibernate.metamodel.mapping.AttributeMapping;
import org.hibernate.metamodel.mapping.BasicValuedModelPart;
import org.hibernate.metamodel.mapping.EmbeddableMappingType;
import org.hibernate.metamodel.mapping.internal.ToOneAttributeMapping;
import org.hibernate.persister.entity.EntityPersister;
import org.jspecify.annotations.Nullable;

/** Tells two states of a row apart, field by field. */
final class Fields {

  private final EntityPersister rows;
  private final Names names;

  Fields(EntityPersister rows, Names names) {
    this.rows = rows;
    this.names = names;
  }

  /**
   * @param from null if there was no row before, or Hibernate does not know how it was
   * @param to null if there is none any more
   */
  List<FieldChange> between(@Nullable Object @Nullable [] from, @Nullable Object @Nullable [] to) {
    List<FieldChange> changes = new ArrayList<>();
    rows.forEachAttributeMapping(
        attribute -> {
          int at = attribute.getStateArrayPosition();
          if (isTakenDown(attribute)) {
            add(attribute, from == null ? null : from[at], to == null ? null : to[at], changes);
          }
        });
    return changes;
  }

  private boolean isTakenDown(AttributeMapping attribute) {
    return !attribute.isPluralAttributeMapping()
        && attribute != version()
        && !LeftOut.field(names.entity(rows), attribute.getAttributeName());
  }

  private @Nullable Object version() {
    return rows.getVersionMapping() == null ? null : rows.getVersionMapping().getVersionAttribute();
  }

  private void add(
      AttributeMapping attribute,
      @Nullable Object from,
      @Nullable Object to,
      List<FieldChange> changes) {
    if (from == to) {
      return;
    }
    Map<String, @Nullable String> before = texts(attribute, "", from);
    Map<String, @Nullable String> after = texts(attribute, "", to);
    boolean secret = LeftOut.isSecret(names.entity(rows), attribute.getAttributeName());
    Set<String> fields = new LinkedHashSet<>(before.keySet());
    fields.addAll(after.keySet());
    fields.stream()
        .filter(field -> !Objects.equals(before.get(field), after.get(field)))
        .map(field -> change(field, before.get(field), after.get(field), secret))
        .forEach(changes::add);
  }

  private static FieldChange change(
      String field, @Nullable String from, @Nullable String to, boolean secret) {
    return secret
        ? new FieldChange(field, hidden(from), hidden(to))
        : new FieldChange(field, from, to);
  }

  private static @Nullable String hidden(@Nullable String value) {
    return value == null ? null : LeftOut.SECRET;
  }

  /** The texts of a field, or of each field of a group. */
  private Map<String, @Nullable String> texts(
      AttributeMapping attribute, String group, @Nullable Object value) {
    Map<String, @Nullable String> texts = new LinkedHashMap<>();
    String name = group + attribute.getAttributeName();
    if (value == null) {
      return texts;
    }
    if (attribute.isEmbeddedAttributeMapping()) {
      EmbeddableMappingType parts =
          attribute.asEmbeddedAttributeMapping().getEmbeddableTypeDescriptor();
      Object[] values = parts.getValues(value);
      for (int i = 0; i < values.length; i++) {
        texts.putAll(texts(parts.getAttributeMapping(i), name + ".", values[i]));
      }
    } else {
      texts.put(name, text(attribute, value));
    }
    return texts;
  }

  private @Nullable String text(AttributeMapping attribute, Object value) {
    if (attribute instanceof ToOneAttributeMapping) {
      return names.reference(value);
    }
    return attribute instanceof BasicValuedModelPart basic
        ? ValueText.of(basic.getJdbcMapping().convertToRelationalValue(value))
        : ValueText.of(value);
  }
}
