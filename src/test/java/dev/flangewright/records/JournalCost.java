package dev.flangewright.records;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.bench.LogStage;
import dev.flangewright.bench.Piece;
import dev.flangewright.parts.exchange.ImportRegister;
import dev.flangewright.parts.exchange.Progress;
import dev.flangewright.parts.exchange.RegisterFiles;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import jakarta.persistence.EntityManagerFactory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hibernate.engine.spi.SessionFactoryImplementor;
import org.hibernate.event.service.spi.EventListenerGroup;
import org.hibernate.event.spi.EventType;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;

/**
 * Measures what the journal costs, by turns with it and without it in one run; asserts nothing and
 * is run by hand: {@code mvn test -Dtest=JournalCost}.
 */
@DatabaseTest
class JournalCost {

  private static final int ROUNDS = 4;
  private static final int PARTS = 1000;
  private static final int ENTRIES = 100;

  @Autowired ApplicationContext context;
  @Autowired LogStage log;
  @Autowired ImportRegister register;
  @Autowired EntityManagerFactory entities;

  @Test
  void measure() throws IOException {
    List<String> said = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      double with = stageEntryMs();
      double importWith = importMs();
      List<Runnable> back = silence();
      double without = stageEntryMs();
      double importWithout = importMs();
      back.forEach(Runnable::run);
      said.add(
          "journal: stage entry %.2f ms with, %.2f without; import %.0f ms with, %.0f without"
              .formatted(with, without, importWith, importWithout));
    }
    said.forEach(System.out::println);
  }

  private double stageEntryMs() {
    AWorkshop shop = AWorkshop.in(context);
    List<Piece> pieces =
        IntStream.range(0, ENTRIES).mapToObj(i -> shop.begin(shop.part("TW-" + i))).toList();
    long from = System.nanoTime();
    for (Piece piece : pieces) {
      AWorkshop.as(
          Role.FITTER, () -> log.start(piece.id(), piece.stages().get(0).code(), null, ""));
    }
    return (System.nanoTime() - from) / 1e6 / ENTRIES;
  }

  private double importMs() throws IOException {
    long build = AWorkshop.in(context).buildId();
    RegisterFiles files = new RegisterFiles(many("demo/register.csv"), many("demo/contours.csv"));
    long from = System.nanoTime();
    AWorkshop.as(Role.LEAD, () -> register.apply(build, files, Progress.UNSEEN));
    return (System.nanoTime() - from) / 1e6;
  }

  /** The rows of the first part of a demo file, for a thousand parts. */
  private static Resource many(String file) throws IOException {
    List<String> lines =
        new ClassPathResource(file).getContentAsString(StandardCharsets.UTF_8).lines().toList();
    String first = lines.get(1).substring(0, lines.get(1).indexOf(','));
    List<String> rows = lines.stream().filter(line -> line.startsWith(first + ",")).toList();
    String text =
        IntStream.range(0, PARTS)
            .boxed()
            .flatMap(i -> rows.stream().map(row -> row.replaceFirst(first, "P-" + i)))
            .collect(Collectors.joining("\n", lines.get(0) + "\n", "\n"));
    return new ByteArrayResource(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Takes the listeners away, and hands back what puts them there again. */
  private List<Runnable> silence() {
    return List.of(
        silence(EventType.POST_INSERT), silence(EventType.POST_UPDATE),
        silence(EventType.POST_DELETE), silence(EventType.POST_COLLECTION_RECREATE),
        silence(EventType.PRE_COLLECTION_UPDATE), silence(EventType.PRE_COLLECTION_REMOVE));
  }

  private <T> Runnable silence(EventType<T> type) {
    EventListenerGroup<T> group =
        entities
            .unwrap(SessionFactoryImplementor.class)
            .getEventEngine()
            .getListenerRegistry()
            .getEventListenerGroup(type);
    List<T> heard = new ArrayList<>();
    group.fireEventOnEachListener(heard, (listener, list) -> list.add(listener));
    group.clearListeners();
    return () -> heard.forEach(group::appendListener);
  }
}
