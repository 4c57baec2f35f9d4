package dev.flangewright.parts;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;

/** Stores the holes of a part as their lines. */
@Converter(autoApply = true)
class WrittenHolesColumn implements AttributeConverter<WrittenHoles, String> {

  @Override
  public @Nullable String convertToDatabaseColumn(@Nullable WrittenHoles holes) {
    return holes == null ? null : holes.lines();
  }

  @Override
  public @Nullable WrittenHoles convertToEntityAttribute(@Nullable String lines) {
    return lines == null ? null : new WrittenHoles(lines);
  }
}
