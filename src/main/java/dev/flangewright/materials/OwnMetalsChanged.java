package dev.flangewright.materials;

/** A build's own values for an alloy and temper are others now; told inside the transaction. */
public record OwnMetalsChanged(long buildId, String alloy, String temper) {}
