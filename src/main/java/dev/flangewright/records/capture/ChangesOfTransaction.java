package dev.flangewright.records.capture;

import dev.flangewright.records.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hibernate.Hibernate;
import org.hibernate.engine.spi.SessionImplementor;
import org.hibernate.engine.spi.SharedSessionContractImplementor;
import org.hibernate.proxy.HibernateProxy;
import org.hibernate.proxy.LazyInitializer;

/** What one transaction has changed so far, in order. */
final class ChangesOfTransaction {

  private final List<Taken> taken = new ArrayList<>();

  void add(Taken change) {
    taken.add(change);
  }

  /** By chain; whatever has to be read for it is read now. */
  SortedMap<String, List<Change>> byChain(SharedSessionContractImplementor session) {
    SortedMap<String, List<Change>> chains = new TreeMap<>();
    for (Taken change : taken) {
      Whereabouts place = place(change, session);
      chains.computeIfAbsent(place.chain(), any -> new ArrayList<>()).add(change.at(place));
    }
    return chains;
  }

  private static Whereabouts place(Taken change, SharedSessionContractImplementor session) {
    Whereabouts known = change.whereabouts();
    if (known != null) {
      return known;
    }
    if (change.row() == null) {
      throw new IllegalStateException("Nobody knows where a " + change.kind() + " belongs");
    }
    return new FindWhereabouts(new Names(session), pointedAt -> read(pointedAt, session))
        .of(change.row())
        .orElseThrow();
  }

  /** Its own session may be through with a row that is not read yet. */
  private static Optional<Object> read(Object pointedAt, SharedSessionContractImplementor session) {
    LazyInitializer proxy = HibernateProxy.extractLazyInitializer(pointedAt);
    if (proxy == null) {
      return Optional.of(pointedAt);
    }
    return proxy.isUninitialized()
        ? Optional.ofNullable(
                ((SessionImplementor) session)
                    .find(proxy.getPersistentClass(), proxy.getInternalIdentifier()))
            .map(Hibernate::unproxy)
        : Optional.of(proxy.getImplementation());
  }
}
