package dev.flangewright.parts;

import org.springframework.data.jpa.repository.JpaRepository;

/** All flanges. */
public interface Flanges extends JpaRepository<Flange, Long> {}
