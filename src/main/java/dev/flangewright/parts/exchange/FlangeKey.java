package dev.flangewright.parts.exchange;

/** What names a flange in both files. */
record FlangeKey(String partNumber, String flange) {}
