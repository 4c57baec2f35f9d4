package dev.flangewright.parts.web;

import dev.flangewright.materials.KeepOwnMetals;
import dev.flangewright.materials.KeepShopValues;
import dev.flangewright.parts.Builds;
import dev.flangewright.people.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** What a build's figures are computed with, beyond the shipped tables. */
@RestController
@RequestMapping("/api/v1/builds/{id}")
@Tag(name = "Builds")
class OwnMetalsApi {

  private final Builds builds;
  private final KeepOwnMetals metals;
  private final KeepShopValues shop;

  OwnMetalsApi(Builds builds, KeepOwnMetals metals, KeepShopValues shop) {
    this.builds = builds;
    this.metals = metals;
    this.shop = shop;
  }

  @GetMapping("/metals")
  @Operation(
      summary = "List a build's own metals",
      description = "Values entered from certificates, withdrawn ones too.")
  List<OwnMetalAnswer> metals(@PathVariable long id) {
    there(id);
    return metals.of(id).stream().map(OwnMetalAnswer::of).toList();
  }

  @PostMapping("/metals")
  @ResponseStatus(HttpStatus.CREATED)
  @Operation(
      summary = "Enter a metal of the build's own",
      description =
          "A value stated here answers before those of the shipped tables, for this build alone;"
              + " its figures are computed again. Needs a lead or a manager.")
  OwnMetalAnswer add(@PathVariable long id, @Valid @RequestBody OwnMetalRequest request) {
    there(id);
    return OwnMetalAnswer.of(metals.add(id, request.entry()));
  }

  @GetMapping("/shop-values")
  @Operation(
      summary = "Read a build's shop values",
      description = "Each with the value in force, the default, and the source.")
  List<ShopValueAnswer> shopValues(@PathVariable long id) {
    there(id);
    return ShopValueAnswer.of(shop.of(id));
  }

  private void there(long id) {
    if (!builds.existsById(id)) {
      throw Refused.unknown("build", id);
    }
  }
}
