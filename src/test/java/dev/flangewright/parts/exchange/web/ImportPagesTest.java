package dev.flangewright.parts.exchange.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.parts.MakeBuild;
import dev.flangewright.people.KeepAccounts;
import dev.flangewright.people.Role;
import dev.flangewright.people.SignedIn;
import dev.flangewright.testing.DatabaseTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.ClassPathResource;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.UserRequestPostProcessor;
import org.springframework.test.web.servlet.MockMvc;

/** The way of two files from upload to register, as a person walks it. */
@DatabaseTest(properties = "flangewright.data=target/import-pages")
class ImportPagesTest {

  private static final AtomicInteger BUILDS = new AtomicInteger();
  private static final int PATIENCE = 200;
  private static final UserRequestPostProcessor LEAD = signedIn(Role.LEAD);
  private static final UserRequestPostProcessor GUEST = signedIn(Role.GUEST);

  @Autowired private MockMvc web;
  @Autowired private MakeBuild makeBuild;
  @Autowired private KeepAccounts accounts;

  private long build;

  @BeforeEach
  void anEmptyBuild() {
    if (accounts.nobodyYet()) {
      accounts.first("lead", "lofted lines in chalk");
    }
    SignedIn.as(
        "lead",
        Role.LEAD,
        () -> build = makeBuild.named("Float " + BUILDS.incrementAndGet(), "").id());
  }

  @Test
  void the_form_explains_the_files() throws Exception {
    web.perform(get(imports()).with(LEAD))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Check these files")))
        .andExpect(content().string(containsString("bend_angle_deg")));
  }

  @Test
  void a_guest_sees_no_form_and_may_not_upload() throws Exception {
    web.perform(get(imports()).with(GUEST))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString("Check these files"))));
    web.perform(multipart(imports()).file(register(text("register"))).with(GUEST).with(csrf()))
        .andExpect(status().isForbidden());
  }

  @Test
  void files_are_checked_accepted_and_exported_again() throws Exception {
    String job = upload(text("register"), text("contours"));

    assertThat(finished(job)).contains("What would change?", "New parts: 1", "TW-F07-S3L");
    web.perform(post(job + "/accept").with(LEAD).with(csrf())).andExpect(redirectedUrl(job));
    assertThat(finished(job)).contains("The rows are stored").doesNotContain("/accept");

    web.perform(get("/builds/" + build + "/export/register.csv").with(GUEST))
        .andExpect(status().isOk())
        .andExpect(header().string("Content-Type", "text/csv;charset=utf-8"))
        .andExpect(header().string("Content-Disposition", "attachment; filename=\"register.csv\""))
        .andExpect(content().bytes(text("register").getBytes(StandardCharsets.UTF_8)));
    web.perform(get("/builds/" + build + "/export/contours.csv").with(GUEST))
        .andExpect(content().bytes(text("contours").getBytes(StandardCharsets.UTF_8)));
    assertThat(waitingFiles()).isZero();
  }

  @Test
  void the_same_files_again_say_no_changes() throws Exception {
    String first = upload(text("register"), text("contours"));
    finished(first);
    web.perform(post(first + "/accept").with(LEAD).with(csrf()));
    finished(first);

    assertThat(finished(upload(text("register"), text("contours"))))
        .contains("No changes")
        .doesNotContain("Import these rows");
  }

  @Test
  void a_bad_row_is_listed_and_cannot_be_accepted() throws Exception {
    String job = upload(text("register").replace("left", "<b>port</b>"), text("contours"));

    assertThat(finished(job))
        .contains("These files cannot be imported yet", "hand must be one of left, right, none")
        .contains("&lt;b&gt;port&lt;/b&gt;")
        .doesNotContain("<b>port</b>")
        .doesNotContain("Import these rows");
    web.perform(post(job + "/accept").with(LEAD).with(csrf())).andExpect(redirectedUrl(job));
    assertThat(finished(job)).contains("These files cannot be imported yet");
  }

  @Test
  void discarded_files_are_deleted() throws Exception {
    String job = upload(text("register"), null);
    finished(job);

    web.perform(post(job + "/discard").with(LEAD).with(csrf())).andExpect(redirectedUrl(imports()));

    assertThat(waitingFiles()).isZero();
    web.perform(get(job).with(LEAD))
        .andExpect(status().isNotFound())
        .andExpect(content().string(containsString("nothing was")));
  }

  @Test
  void a_guest_may_not_accept_what_a_lead_uploaded() throws Exception {
    String job = upload(text("register"), text("contours"));
    finished(job);

    web.perform(post(job + "/accept").with(GUEST).with(csrf())).andExpect(status().isForbidden());
    web.perform(post(job + "/discard").with(GUEST).with(csrf())).andExpect(status().isForbidden());

    assertThat(finished(job)).contains("What would change?");
    web.perform(post(job + "/discard").with(LEAD).with(csrf()));
  }

  @Test
  void other_files_take_the_place_of_those_not_accepted() throws Exception {
    String first = upload(text("register"), null);
    finished(first);
    String second = upload(text("register"), text("contours"));
    finished(second);

    web.perform(get(first).with(LEAD)).andExpect(status().isNotFound());
    web.perform(post(second + "/discard").with(LEAD).with(csrf()));
  }

  @Test
  void no_file_chosen_is_said_on_the_form() throws Exception {
    web.perform(
            multipart(imports())
                .file(new MockMultipartFile("register", "", null, new byte[0]))
                .with(LEAD)
                .with(csrf()))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("Choose register.csv, contours.csv or both.")));
  }

  @Test
  void an_unknown_build_has_no_import_and_no_export() throws Exception {
    for (String page : new String[] {"import", "export/register.csv", "export/contours.csv"}) {
      web.perform(get("/builds/987654/" + page).with(LEAD)).andExpect(status().isNotFound());
    }
  }

  @Test
  void a_running_job_is_asked_for_again_in_part() throws Exception {
    String job = upload(text("register"), text("contours"));
    finished(job);

    String part =
        web.perform(get(job).header("HX-Request", "true").with(LEAD))
            .andReturn()
            .getResponse()
            .getContentAsString();

    assertThat(part.strip()).startsWith("<div id=\"job\"").doesNotContain("<html", "hx-get");
    web.perform(post(job + "/discard").with(LEAD).with(csrf()));
  }

  private String imports() {
    return "/builds/" + build + "/import";
  }

  private String upload(String register, @org.jspecify.annotations.Nullable String contours)
      throws Exception {
    var request = multipart(imports()).file(register(register));
    if (contours != null) {
      request.file(
          new MockMultipartFile(
              "contours", "contours.csv", "text/csv", contours.getBytes(StandardCharsets.UTF_8)));
    }
    String job =
        web.perform(request.with(LEAD).with(csrf())).andReturn().getResponse().getRedirectedUrl();
    assertThat(job).startsWith(imports() + "/");
    return String.valueOf(job);
  }

  /** The page once nothing is under way any more. */
  private String finished(String job) throws Exception {
    String page = "";
    for (int i = 0; i < PATIENCE; i++) {
      page = web.perform(get(job).with(LEAD)).andReturn().getResponse().getContentAsString();
      if (!page.contains("<progress")) {
        return page;
      }
      assertThat(page).contains("hx-trigger=\"every 1s\"", "Look again");
      Thread.sleep(100);
    }
    throw new AssertionError("still under way: " + page);
  }

  private static MockMultipartFile register(String text) {
    return new MockMultipartFile(
        "register", "register.csv", "text/csv", text.getBytes(StandardCharsets.UTF_8));
  }

  /** One part with two flanges. */
  private static String text(String file) throws IOException {
    return new ClassPathResource("exchange/one-part-" + file + ".csv")
        .getContentAsString(StandardCharsets.UTF_8);
  }

  private static long waitingFiles() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("target/import-pages/imports"))) {
      return files.filter(Files::isRegularFile).count();
    }
  }

  private static UserRequestPostProcessor signedIn(Role role) {
    String[] permissions = role.permissions().stream().map(Enum::name).toArray(String[]::new);
    return user(role.word())
        .authorities(
            org.springframework.security.core.authority.AuthorityUtils.createAuthorityList(
                permissions));
  }
}
