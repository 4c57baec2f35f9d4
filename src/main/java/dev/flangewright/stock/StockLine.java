package dev.flangewright.stock;

/**
 * A batch as the ledger lists it.
 *
 * @param pieces how many pieces were cut from it
 */
public record StockLine(Batch batch, long pieces) {}
