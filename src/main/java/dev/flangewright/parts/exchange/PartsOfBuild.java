package dev.flangewright.parts.exchange;

import dev.flangewright.parts.Part;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Walks through entries a few hundred at a time, each with its part, in bounded memory. */
@Component
class PartsOfBuild {

  private static final int AT_A_TIME = 200;

  private final EntityManager entities;

  PartsOfBuild(EntityManager entities) {
    this.entities = entities;
  }

  /** What is done with an entry and its part; the part is null if the build has none. */
  interface Visit extends BiConsumer<Entry, @Nullable Part> {}

  /** Clears the persistence context after every few hundred; whoever writes, flushes in between. */
  void walk(long buildId, List<Entry> entries, String doing, Progress progress, Visit visit) {
    for (int from = 0; from < entries.size(); from += AT_A_TIME) {
      progress.at(doing, from, entries.size());
      List<Entry> some = entries.subList(from, Math.min(from + AT_A_TIME, entries.size()));
      var parts = parts(buildId, some.stream().map(Entry::partNumber).toList());
      some.forEach(entry -> visit.accept(entry, parts.get(entry.partNumber())));
      entities.flush();
      entities.clear();
    }
  }

  private java.util.Map<String, Part> parts(long buildId, List<String> numbers) {
    return entities
        .createQuery(
            "select distinct p from Part p join fetch p.frame left join fetch p.flanges"
                + " where p.build.id = :build and p.partNumber in :numbers",
            Part.class)
        .setParameter("build", buildId)
        .setParameter("numbers", numbers)
        .getResultStream()
        .collect(Collectors.toMap(Part::partNumber, Function.identity()));
  }

  /** Of a whole build. */
  long count(long buildId) {
    return entities
        .createQuery("select count(p) from Part p where p.build.id = :build", Long.class)
        .setParameter("build", buildId)
        .getSingleResult();
  }
}
