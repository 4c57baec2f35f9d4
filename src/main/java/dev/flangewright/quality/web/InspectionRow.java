package dev.flangewright.quality.web;

import dev.flangewright.quality.InspectionLine;

/** An inspection in the list of a whole build: with its part. */
record InspectionRow(String partNumber, InspectionLine line) {}
