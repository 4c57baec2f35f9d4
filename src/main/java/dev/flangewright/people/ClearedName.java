package dev.flangewright.people;

/** That somebody is cleared for a sort of work: one row of one query. */
record ClearedName(Clearance clearance, String username) {}
