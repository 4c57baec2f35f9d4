package dev.flangewright.materials;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The shipped tables, row by row. */
record ShippedTables(
    List<MaterialRow> materials,
    List<HardeningRow> hardening,
    List<BendRadiusRow> radii,
    List<Gauge> gauges,
    List<HeatTreatment> heatTreatments,
    List<SheetTolerance> tolerances) {

  static ShippedTables read(JdbcClient jdbc) {
    return new ShippedTables(
        rows(
            jdbc,
            MaterialRow.class,
            "select alloy, temper, form, thk_min_mm, thk_max_mm, density_kg_m3, young_gpa,"
                + " proof_typ_mpa, proof_min_mpa, uts_typ_mpa, uts_min_mpa, elongation_min_pct,"
                + " elongation_typ_pct, n_value, source, known_by, note from material order by id"),
        rows(
            jdbc,
            HardeningRow.class,
            "select alloy, temper, proof_typ_mpa, uts_typ_mpa, n_value, k_mpa, uts_check_mpa,"
                + " source, known_by from hardening order by id"),
        rows(
            jdbc,
            BendRadiusRow.class,
            "select alloy, temper, thk_mm, r_over_t_low, r_over_t_high, source, known_by"
                + " from bend_radius order by id"),
        rows(
            jdbc,
            Gauge.class,
            "select system, number, mm, source, known_by from gauge order by id"),
        rows(
            jdbc,
            HeatTreatment.class,
            "select alloys, step, applies_to, low, high, unit, source, known_by, note"
                + " from heat_treatment order by id"),
        rows(
            jdbc,
            SheetTolerance.class,
            "select standard, alloy_group, thk_over_mm, thk_upto_mm, width, tolerance_mm, source,"
                + " known_by, note from sheet_tolerance order by id"));
  }

  private static <T> List<T> rows(JdbcClient jdbc, Class<T> row, String select) {
    return jdbc.sql(select).query(row).list();
  }
}
