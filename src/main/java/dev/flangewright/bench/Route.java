package dev.flangewright.bench;

import dev.flangewright.people.Refused;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/**
 * One version of a route: the stages that pieces of a build go through, in their order. A draft can
 * be changed; once released it never changes again, and a change makes the next version. Every verb
 * leaves a sound route.
 */
@Entity
public class Route {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE)
  private @Nullable Long id;

  @Version private long version;
  private long buildId;
  private String name;
  private int number;

  @Enumerated(EnumType.STRING)
  @JdbcTypeCode(SqlTypes.VARCHAR)
  private RouteState state;

  private @Nullable Long basedOnId;

  /** Grows with every change, so that a page can say which state of the draft it showed. */
  private int changes;

  private Instant madeAt;
  private String madeBy;

  @OneToMany(mappedBy = "route", cascade = CascadeType.ALL, orphanRemoval = true)
  @OrderBy("seq")
  private List<RouteStage> stages = new ArrayList<>();

  protected Route() {}

  /** A draft of the first version of a route, with no stage yet. */
  Route(long buildId, String name, Signature by) {
    this.buildId = buildId;
    this.name = Texts.of("name", name, 1, 60);
    this.number = 1;
    this.state = RouteState.DRAFT;
    this.madeAt = by.at();
    this.madeBy = by.who();
  }

  /** A draft with the stages of this one: the given version of a route of that name. */
  Route draft(String draftName, int draftNumber, Signature by) {
    Route draft = new Route(buildId, draftName, by);
    draft.number = draftNumber;
    draft.basedOnId = id;
    stages.forEach(draft::copy);
    return draft;
  }

  private void copy(RouteStage from) {
    RouteStage stage =
        new RouteStage(
            this, stages.size() + 1, from.code(), new StagePlan(from.card(), from.flangesNeeded()));
    stage.asksAs(from);
    stages.add(stage);
  }

  /** Puts a stage in at the end, without regard to soundness: for the shipped routes. */
  RouteStage append(String code, StagePlan plan) {
    RouteStage stage = new RouteStage(this, stages.size() + 1, code, plan);
    stages.add(stage);
    return stage;
  }

  /** Puts a stage of work in, last before the inspection. */
  RouteStage add(StagePlan plan) {
    refuseUnlessDraft();
    String code = CodeOfName.of(plan.card().name(), "stage", this::hasCode);
    RouteStage stage = new RouteStage(this, 0, code, plan);
    boolean last = plan.card().kind().byInspection();
    stages.add(last ? stages.size() : SoundRoute.placeOfInspection(stages), stage);
    settle();
    return stage;
  }

  void change(long stageId, StagePlan plan) {
    stageToChange(stageId).reads(plan);
    settle();
  }

  /**
   * @param by −1 for one place earlier, 1 for one later
   */
  void move(long stageId, int by) {
    int from = stages.indexOf(stageToChange(stageId));
    int to = from + by;
    if (to < 0 || to >= stages.size()) {
      throw Refused.conflict("The stage stands at the end of the route already.");
    }
    Collections.swap(stages, from, to);
    settle();
  }

  void remove(long stageId) {
    stages.remove(stageToChange(stageId));
    settle();
  }

  /** The stage of a draft, whose checks are about to be changed. */
  RouteStage stageToChange(long stageId) {
    refuseUnlessDraft();
    changes++;
    return stages.stream()
        .filter(stage -> stage.hasId(stageId))
        .findFirst()
        .orElseThrow(() -> Refused.unknown("stage", stageId));
  }

  /** Makes it the version that pieces begin on from now on. */
  void release() {
    refuseUnlessDraft();
    SoundRoute.refuseUnlessSound(stages);
    state = RouteState.RELEASED;
  }

  void refuseUnlessDraft() {
    if (state != RouteState.DRAFT) {
      throw Refused.conflict(
          label() + " is released and does not change any more. Make a new version of it.");
    }
  }

  /**
   * @param seen the number of changes that the page showed
   */
  void refuseIfStale(int seen) {
    if (seen != changes) {
      throw Refused.conflict(
          "Somebody changed this route in the meantime. Nothing was stored; look at it again.");
    }
  }

  private void settle() {
    SoundRoute.refuseUnlessSound(stages);
    for (int i = 0; i < stages.size(); i++) {
      stages.get(i).standsAt(i + 1);
    }
    changes++;
  }

  private boolean hasCode(String code) {
    return stages.stream().anyMatch(stage -> stage.code().equals(code));
  }

  /** Name and version, as people say it: {@code "Two flanges, version 2"}. */
  public String label() {
    return name + ", version " + number;
  }

  /** The stages that a part of so many flanges goes through. */
  public List<RouteStage> stagesFor(int flanges) {
    return stages.stream().filter(stage -> stage.appliesTo(flanges)).toList();
  }

  public boolean isDraft() {
    return state == RouteState.DRAFT;
  }

  public Long id() {
    return Objects.requireNonNull(id);
  }

  public long buildId() {
    return buildId;
  }

  public String name() {
    return name;
  }

  public int number() {
    return number;
  }

  public RouteState state() {
    return state;
  }

  public @Nullable Long basedOnId() {
    return basedOnId;
  }

  public int changes() {
    return changes;
  }

  public Instant madeAt() {
    return madeAt;
  }

  public String madeBy() {
    return madeBy;
  }

  public List<RouteStage> stages() {
    return Collections.unmodifiableList(stages);
  }
}
