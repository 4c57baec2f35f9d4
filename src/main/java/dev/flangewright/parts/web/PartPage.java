package dev.flangewright.parts.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** One page of a build's parts, in the order of their part numbers. */
record PartPage(
    List<PartLine> items,
    @Schema(description = "Counted from 0.") int page,
    int size,
    long totalItems,
    int totalPages) {}
