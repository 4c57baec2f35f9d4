package dev.flangewright.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RoleTest {

  @Test
  void a_guest_reads_only() {
    assertThat(Role.GUEST.permissions()).isEmpty();
  }

  @Test
  void a_hold_point_is_released_by_an_inspector_or_the_lead_alone() {
    assertThat(Role.values())
        .filteredOn(role -> role.permissions().contains(Permission.RELEASE_HOLD))
        .containsExactlyInAnyOrder(Role.LEAD, Role.INSPECTOR);
  }

  @Test
  void only_the_lead_keeps_the_accounts() {
    assertThat(Role.values())
        .filteredOn(role -> role.permissions().contains(Permission.MANAGE_PEOPLE))
        .containsExactly(Role.LEAD);
  }

  @Test
  void blocks_are_kept_by_the_lead_and_the_fitters() {
    assertThat(Role.values())
        .filteredOn(role -> role.permissions().contains(Permission.KEEP_BLOCKS))
        .containsExactlyInAnyOrder(Role.LEAD, Role.FITTER);
  }

  @Test
  void metal_in_stock_is_kept_by_the_lead_and_the_fitters_and_released_by_who_inspects() {
    assertThat(Role.values())
        .filteredOn(role -> role.permissions().contains(Permission.KEEP_STOCK))
        .containsExactlyInAnyOrder(Role.LEAD, Role.FITTER);
    assertThat(Role.values())
        .filteredOn(role -> role.permissions().contains(Permission.INSPECT))
        .containsExactlyInAnyOrder(Role.LEAD, Role.INSPECTOR);
  }
}
