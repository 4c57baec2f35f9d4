package dev.flangewright.records.capture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.flangewright.testing.DatabaseTest;
import jakarta.persistence.EntityManagerFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hibernate.SessionFactory;
import org.hibernate.metamodel.MappingMetamodel;
import org.hibernate.metamodel.mapping.AttributeMapping;
import org.hibernate.metamodel.mapping.EntityValuedModelPart;
import org.hibernate.metamodel.mapping.internal.ToOneAttributeMapping;
import org.hibernate.persister.collection.CollectionPersister;
import org.hibernate.persister.entity.EntityPersister;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Whoever adds an entity, a field or a way to write learns here what the journal makes of it. */
@DatabaseTest
class NothingForgottenTest {

  /** What belongs to no build. */
  private static final Set<String> OF_THE_INSTALLATION =
      Set.of("AccessToken", "Account", "Build", "Invitation", "ScrapCause");

  private static final Pattern SECRET = Pattern.compile("(?i).*(hash|digest|secret|password).*");

  /** Ways to write that Hibernate's listeners do not hear of. */
  private static final Pattern UNHEARD =
      Pattern.compile(
          "@Modifying|JdbcClient|JdbcTemplate|JdbcOperations|NativeQuery|executeUpdate"
              + "|MutationQuery|StatelessSession|prepareStatement|InBatch\\(");

  /** The files that use one, and what for. */
  private static final Set<String> KNOWN_TO_BE_UNHEARD =
      Set.of(
          "materials/MaterialLibrary.java", // reads the shipped tables
          "materials/ShippedTables.java", // reads the shipped tables
          "parts/Parts.java", // marks figures as stale, which are worked out again
          "records/Checkpoints.java", // reads the journal
          "records/FindEntries.java", // reads the journal
          "records/ReadJournal.java", // reads the journal
          "records/archive/LoadArchive.java", // fills an empty database, the journal included
          "records/capture/WriteEntries.java"); // writes the journal itself

  @Autowired EntityManagerFactory entities;

  @Test
  void every_entity_is_left_out_by_name_or_finds_its_build_or_belongs_to_the_installation() {
    for (EntityPersister rows : all()) {
      String name = rows.getMappedClass().getSimpleName();
      assertThat(LeftOut.entity(name) || OF_THE_INSTALLATION.contains(name) != findsItsBuild(rows))
          .as("%s needs a build, or has to be named here or in LeftOut", name)
          .isTrue();
    }
  }

  @Test
  void only_what_exists_is_left_out_or_kept_secret() {
    Set<String> fields = new TreeSet<>();
    Set<String> names = new TreeSet<>();
    for (EntityPersister rows : all()) {
      String name = rows.getMappedClass().getSimpleName();
      names.add(name);
      rows.forEachAttributeMapping(one -> fields.add(name + "." + one.getAttributeName()));
    }
    assertThat(names).containsAll(LeftOut.ENTITIES.keySet()).containsAll(OF_THE_INSTALLATION);
    assertThat(fields).containsAll(LeftOut.FIELDS.keySet()).containsAll(LeftOut.SECRETS);
  }

  @Test
  void a_field_that_sounds_like_a_secret_is_kept_as_one() {
    List<String> sounding = new ArrayList<>();
    for (EntityPersister rows : all()) {
      String name = rows.getMappedClass().getSimpleName();
      rows.forEachAttributeMapping(
          one -> {
            if (!LeftOut.entity(name) && SECRET.matcher(one.getAttributeName()).matches()) {
              sounding.add(name + "." + one.getAttributeName());
            }
          });
    }
    assertThat(sounding).isNotEmpty().allMatch(LeftOut.SECRETS::contains);
  }

  @Test
  void every_list_holds_rows_that_are_taken_down_or_plain_values() {
    List<String> lists = new ArrayList<>();
    metamodel()
        .forEachCollectionDescriptor(
            list -> {
              if (CaptureLists.isTakenDown(list)) {
                lists.add(list.getRole());
                assertThat(list.getAttributeMapping().getElementDescriptor())
                    .as(list.getRole())
                    .isNotInstanceOf(EntityValuedModelPart.class);
              } else {
                assertThat(pointsBack(list)).as(list.getRole()).isTrue();
              }
            });
    assertThat(lists).contains("dev.flangewright.people.Account.clearances");
  }

  @Test
  void nothing_is_written_past_hibernate_that_is_not_known_here() throws IOException {
    Path main = Path.of("src/main/java/dev/flangewright");
    Set<String> unheard = new TreeSet<>();
    try (Stream<Path> files = Files.walk(main)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        if (UNHEARD.matcher(Files.readString(file)).find()) {
          unheard.add(main.relativize(file).toString().replace('\\', '/'));
        }
      }
    }
    assertThat(unheard).containsExactlyInAnyOrderElementsOf(KNOWN_TO_BE_UNHEARD);
  }

  private static boolean pointsBack(CollectionPersister list) {
    return list.isOneToMany() && list.isInverse();
  }

  private boolean findsItsBuild(EntityPersister rows) {
    if (rows.findAttributeMapping("buildId") != null
        || rows.findAttributeMapping("build") != null) {
      return true;
    }
    Optional<AttributeMapping> owner = FindWhereabouts.association(rows);
    return owner.isPresent()
        && findsItsBuild(
            ((ToOneAttributeMapping) owner.get()).getEntityMappingType().getEntityPersister());
  }

  private List<EntityPersister> all() {
    List<EntityPersister> all = new ArrayList<>();
    metamodel().forEachEntityDescriptor(all::add);
    assertThat(all).isNotEmpty();
    return all;
  }

  private MappingMetamodel metamodel() {
    return (MappingMetamodel) entities.unwrap(SessionFactory.class).getMetamodel();
  }
}
