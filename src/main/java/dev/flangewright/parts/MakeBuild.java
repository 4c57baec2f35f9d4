package dev.flangewright.parts;

import dev.flangewright.people.MayEditRegister;
import dev.flangewright.people.Refused;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes a build, and names it anew. */
@Service
public class MakeBuild {

  private static final int LONGEST_NAME = 120;
  private static final int LONGEST_NOTE = 2000;

  private final Builds builds;
  private final ApplicationEventPublisher events;
  private final Clock clock;

  MakeBuild(Builds builds, ApplicationEventPublisher events, Clock clock) {
    this.builds = builds;
    this.events = events;
    this.clock = clock;
  }

  @MayEditRegister
  @Transactional
  public Build named(String name, String note) {
    Build build = new Build(freeName(name, null), checked(note), clock.instant());
    builds.save(build);
    events.publishEvent(new BuildMade(build.id()));
    return build;
  }

  /**
   * @throws Refused if somebody else changed the build since {@code version} was read
   */
  @MayEditRegister
  @Transactional
  public void rename(long id, long version, String name, String note) {
    Build build = builds.findById(id).orElseThrow(() -> Refused.unknown("build", id));
    if (build.version() != version) {
      throw Refused.conflict("Somebody changed this build in the meantime. Look at it again.");
    }
    build.isNamed(freeName(name, build), checked(note));
  }

  private String freeName(String name, @Nullable Build self) {
    String clean = name.strip();
    if (clean.isEmpty() || clean.length() > LONGEST_NAME) {
      throw Refused.unacceptable("name needs 1 to " + LONGEST_NAME + " characters.");
    }
    boolean taken = builds.findByName(clean).filter(other -> other != self).isPresent();
    if (taken) {
      throw Refused.conflict("There is already a build named \"" + clean + "\".");
    }
    return clean;
  }

  private static String checked(String note) {
    if (note.length() > LONGEST_NOTE) {
      throw Refused.unacceptable("note may have at most " + LONGEST_NOTE + " characters.");
    }
    return note.strip();
  }
}
