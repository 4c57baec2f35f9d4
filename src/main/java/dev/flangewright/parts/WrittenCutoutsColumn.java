package dev.flangewright.parts;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;

/** Stores the cutouts of a flange as their lines. */
@Converter(autoApply = true)
class WrittenCutoutsColumn implements AttributeConverter<WrittenCutouts, String> {

  @Override
  public @Nullable String convertToDatabaseColumn(@Nullable WrittenCutouts cutouts) {
    return cutouts == null ? null : cutouts.lines();
  }

  @Override
  public @Nullable WrittenCutouts convertToEntityAttribute(@Nullable String lines) {
    return lines == null ? null : new WrittenCutouts(lines);
  }
}
