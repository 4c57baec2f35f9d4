package dev.flangewright.overview;

/** A flange's contour, thinned out; the sketch is empty where there is none. */
record EdgeLine(long partId, String sketch) {}
