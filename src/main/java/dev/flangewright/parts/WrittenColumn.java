package dev.flangewright.parts;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;

/** Stores a written number as its text. */
@Converter(autoApply = true)
class WrittenColumn implements AttributeConverter<Written, String> {

  @Override
  public @Nullable String convertToDatabaseColumn(@Nullable Written written) {
    return written == null ? null : written.text();
  }

  @Override
  public @Nullable Written convertToEntityAttribute(@Nullable String text) {
    return text == null ? null : new Written(text);
  }
}
