package dev.flangewright.people;

/** Somebody's password, role or leave to sign in has changed; told inside the transaction. */
record AccessChanged(String username) {}
