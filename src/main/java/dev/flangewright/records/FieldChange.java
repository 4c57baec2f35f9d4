package dev.flangewright.records;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What became of one field of a record.
 *
 * @param field as the program calls it, with its unit where it has one
 * @param from null where there was nothing
 * @param to null where there is nothing any more
 */
public record FieldChange(String field, @Nullable String from, @Nullable String to) {

  Map<String, @Nullable Object> members() {
    Map<String, @Nullable Object> members = new HashMap<>();
    members.put("field", field);
    members.put("from", from);
    members.put("to", to);
    return members;
  }
}
