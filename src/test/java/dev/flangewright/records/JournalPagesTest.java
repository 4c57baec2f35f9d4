package dev.flangewright.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.bench.AWorkshop;
import dev.flangewright.people.Role;
import dev.flangewright.testing.DatabaseTest;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The journal as it is read, verified and taken along. */
@DatabaseTest
class JournalPagesTest {

  @Autowired ApplicationContext context;
  @Autowired MockMvc mvc;
  @Autowired Checkpoints checkpoints;
  @TempDir Path folder;

  private String home;
  private Checkpoint now;

  @BeforeEach
  void aHistory() {
    AWorkshop shop = AWorkshop.in(context);
    shop.begin(shop.part("TW-1"));
    shop.part("TW-2");
    home = "/builds/" + shop.buildId() + "/journal";
    now = checkpoints.of(Chains.ofBuild(shop.buildId()));
  }

  @Test
  void the_page_shows_who_changed_what_and_finds_by_part_person_and_day() throws Exception {
    page(home).andExpect(content().string(containsString(now.head())));
    page(home + "?part=tw-1&who=fitter")
        .andExpect(content().string(containsString("made piece TW-1, piece 1")))
        .andExpect(content().string(not(containsString("TW-2"))));
    page(home + "?who=volunteer").andExpect(content().string(containsString("No entry of that")));
    LocalDate today = LocalDate.now(ZoneOffset.UTC);
    page(home + "?part=TW-2&day=" + today)
        .andExpect(content().string(containsString("made part TW-2")));
    page(home + "?part=&who=&day=" + today.minusDays(2))
        .andExpect(content().string(containsString("No entry of that")));
    page(home + "?before=2").andExpect(content().string(containsString("Newest")));
  }

  @Test
  void an_old_checkpoint_is_taken_and_what_is_none_is_refused() throws Exception {
    page(home + "/verdict?checkpoint=" + now.text())
        .andExpect(content().string(containsString(Verdict.Old.CONTAINED.sentence())));
    Checkpoint other = new Checkpoint(now.chain(), now.count(), Sha256.of("other"), now.at());
    page(home + "/verdict?checkpoint=" + other.text())
        .andExpect(content().string(containsString("The journal does not hold")));
    page(home + "/verdict?checkpoint=nonsense")
        .andExpect(content().string(containsString("This is no checkpoint")));
    mvc.perform(
            get("/api/v1" + home + "/verdict")
                .param("checkpoint", other.text())
                .with(AWorkshop.signedIn(Role.MANAGER)))
        .andExpect(status().isOk())
        .andExpect(jsonPath("$.sound").value(false))
        .andExpect(jsonPath("$.ofCheckpoint").value(Verdict.Old.REWRITTEN.sentence()));
    mvc.perform(get("/api/v1" + home + "/checkpoint").with(AWorkshop.signedIn(Role.INSPECTOR)))
        .andExpect(jsonPath("$.head").value(now.head()));
  }

  @Test
  void the_journal_is_open_to_lead_manager_and_inspector_and_that_of_accounts_to_the_lead()
      throws Exception {
    for (Role role : Role.values()) {
      int build = List.of(Role.LEAD, Role.MANAGER, Role.INSPECTOR).contains(role) ? 200 : 403;
      for (String address : List.of(home, home + "/verdict", home + "/entries.jsonl")) {
        mvc.perform(get(address).with(AWorkshop.signedIn(role))).andExpect(status().is(build));
      }
      mvc.perform(get("/api/v1" + home).with(AWorkshop.signedIn(role)))
          .andExpect(status().is(build));
      int accounts = role == Role.LEAD ? 200 : 403;
      for (String address :
          List.of("/journal", "/journal/verdict", "/journal/entries.jsonl", "/api/v1/journal")) {
        mvc.perform(get(address).with(AWorkshop.signedIn(role))).andExpect(status().is(accounts));
      }
    }
    mvc.perform(get("/builds/999999/journal").with(AWorkshop.signedIn(Role.LEAD)))
        .andExpect(status().isNotFound());
  }

  /** As anybody may write it from docs/records.md, with a digest and a JSON reader alone. */
  @Test
  void a_verifier_of_ten_lines_by_another_hand_comes_to_the_same() throws Exception {
    String previous = "0".repeat(64);
    long count = 0;
    String[] lines = exported().split("\n");
    for (int i = 0; i < lines.length - 1; i++) {
      JsonNode entry = JsonMapper.shared().readTree(lines[i]);
      assertThat(entry.get("previous").asString()).isEqualTo(previous);
      assertThat(entry.get("seq").asLong()).isEqualTo(++count);
      byte[] bytes = lines[i].getBytes(StandardCharsets.UTF_8);
      previous = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
    JsonNode end = JsonMapper.shared().readTree(lines[lines.length - 1]).get("checkpoint");
    assertThat(end.get("count").asLong()).isEqualTo(count).isEqualTo(now.count());
    assertThat(end.get("head").asString()).isEqualTo(previous).isEqualTo(now.head());
  }

  @Test
  void the_exported_file_is_verified_without_the_application() throws Exception {
    Path file = Files.writeString(folder.resolve("journal.jsonl"), exported());
    assertThat(verify(file)).isEqualTo(0);
    assertThat(verify(file, now.text().split(" "))).isEqualTo(0);
    assertThat(verify(file, "no", "checkpoint")).isEqualTo(2);
    assertThat(verify(folder.resolve("nothing"))).isEqualTo(2);
    Checkpoint other = new Checkpoint(now.chain(), now.count(), Sha256.of("other"), now.at());
    assertThat(verify(file, other.text())).isEqualTo(1);
    assertThat(verify(file(exported().replaceFirst("TW-1", "TW-9")))).isEqualTo(1);
    assertThat(verify(file(exported().lines().limit(5).toList()))).isEqualTo(1);
    List<String> lines = exported().lines().toList();
    List<String> twice = new ArrayList<>(lines);
    twice.add(lines.size() - 2, lines.get(lines.size() - 2));
    assertThat(verify(file(twice))).isEqualTo(1);
  }

  /** With our own classes alone on its path: no library is there to be used. */
  @Test
  void the_verifier_runs_in_a_java_of_its_own_without_any_library() throws Exception {
    Path file = Files.writeString(folder.resolve("journal.jsonl"), exported());
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                "target/classes",
                VerifyFile.class.getName(),
                file.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(java.waitFor()).as(said).isZero();
    assertThat(said).contains(now.count() + " entries fit together").contains(now.head());
  }

  private Path file(String text) throws Exception {
    return Files.writeString(Files.createTempFile(folder, "journal", ".jsonl"), text);
  }

  private Path file(List<String> lines) throws Exception {
    return file(String.join("\n", lines) + "\n");
  }

  private static int verify(Path file, String... checkpoint) {
    List<String> args = new ArrayList<>(List.of(file.toString()));
    args.addAll(List.of(checkpoint));
    return VerifyFile.of(args, new PrintStream(new ByteArrayOutputStream(), true));
  }

  private String exported() throws Exception {
    return mvc.perform(get(home + "/entries.jsonl").with(AWorkshop.signedIn(Role.LEAD)))
        .andExpect(status().isOk())
        .andReturn()
        .getResponse()
        .getContentAsString(StandardCharsets.UTF_8);
  }

  private ResultActions page(String address) throws Exception {
    return mvc.perform(get(address).with(AWorkshop.signedIn(Role.LEAD))).andExpect(status().isOk());
  }
}
