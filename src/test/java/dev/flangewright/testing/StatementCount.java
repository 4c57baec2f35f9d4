package dev.flangewright.testing;

import jakarta.persistence.EntityManagerFactory;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.function.ThrowingSupplier;

/**
 * Counts the SQL statements that a piece of work prepares through Hibernate. What goes round
 * Hibernate (the session store, the shipped tables) is not counted.
 */
public final class StatementCount {

  private StatementCount() {}

  /** Runs the work and counts; the counter is for the whole application, so run nothing beside. */
  public static long of(EntityManagerFactory factory, ThrowingSupplier<?> work) throws Throwable {
    Statistics statistics = factory.unwrap(SessionFactory.class).getStatistics();
    statistics.setStatisticsEnabled(true);
    try {
      long before = statistics.getPrepareStatementCount();
      work.get();
      return statistics.getPrepareStatementCount() - before;
    } finally {
      statistics.setStatisticsEnabled(false);
    }
  }
}
