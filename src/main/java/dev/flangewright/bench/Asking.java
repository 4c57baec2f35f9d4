package dev.flangewright.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One person's question what to do next, with all that the answer rests on besides the jobs. */
record Asking(Hands who, ShopFloor shop, SetUps setUps, Map<Long, List<PassOnLine>> passedOn) {

  static Asking of(Hands who, ShopFloor shop) {
    return new Asking(
        who,
        shop,
        new SetUps(shop.today(), who.name()),
        shop.passedOn().stream().collect(Collectors.groupingBy(PassOnLine::partId)));
  }

  /** Why the person passed on the job; empty if not, or if it is over. */
  Optional<String> passedOnBecause(Candidate job) {
    return passes(job).filter(this::isOwn).map(PassOnLine::reason).findFirst();
  }

  List<PassOnLine> passedOnByOthers(Candidate job) {
    return passes(job).filter(pass -> !isOwn(pass)).toList();
  }

  private boolean isOwn(PassOnLine pass) {
    return pass.who().equals(who.name());
  }

  private Stream<PassOnLine> passes(Candidate job) {
    return passedOn.getOrDefault(job.part().id(), List.of()).stream()
        .filter(pass -> pass.stillMeans(job.attempts()));
  }
}
