package dev.flangewright.bench;

import dev.flangewright.forming.FlangeKind;
import org.jspecify.annotations.Nullable;

/** What decides the nature of a part: a row for each flange, and one for a part without. */
record NatureLine(long partId, String temper, @Nullable FlangeKind flange) {}
