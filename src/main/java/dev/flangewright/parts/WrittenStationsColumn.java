package dev.flangewright.parts;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.jspecify.annotations.Nullable;

/** Stores a contour as its lines. */
@Converter(autoApply = true)
class WrittenStationsColumn implements AttributeConverter<WrittenStations, String> {

  @Override
  public @Nullable String convertToDatabaseColumn(@Nullable WrittenStations stations) {
    return stations == null ? null : stations.lines();
  }

  @Override
  public @Nullable WrittenStations convertToEntityAttribute(@Nullable String lines) {
    return lines == null ? null : new WrittenStations(lines);
  }
}
