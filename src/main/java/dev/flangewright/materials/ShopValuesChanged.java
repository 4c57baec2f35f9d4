package dev.flangewright.materials;

/** A build's shop values are others now; told inside the same transaction. */
public record ShopValuesChanged(long buildId) {}
