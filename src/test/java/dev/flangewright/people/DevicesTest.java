package dev.flangewright.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.testing.DatabaseTest;
import jakarta.servlet.http.Cookie;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;

/** People see and end their sessions: OWASP ASVS 5.0, 7.5.2. */
@DatabaseTest
class DevicesTest {

  private static final String PASSWORD = "tailor candle wagon";
  private static final String PHONE = "Mozilla/5.0 (Linux; Android 15) AppleWebKit/537.36";
  private static final String DESK = "Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101";
  private static final Pattern MARK = Pattern.compile("/people/devices/([0-9a-f]{64})/end");

  @Autowired MockMvc mvc;
  @Autowired KeepAccounts accounts;

  private final String name = "somebody " + UUID.randomUUID();

  @BeforeEach
  void somebody() {
    SignedIn.as("test", Role.LEAD, () -> accounts.add(name, Role.FITTER, PASSWORD));
  }

  @Test
  void a_lost_phone_is_signed_out_from_the_desk() throws Exception {
    Cookie phone = signIn(PHONE, true);
    Cookie desk = signIn(DESK, false);
    String page =
        mvc.perform(get("/people/devices").cookie(desk))
            .andExpect(content().string(containsString("Linux</span> (this one)")))
            .andExpect(content().string(containsString("Android")))
            .andExpect(content().string(containsString("remembered")))
            .andExpect(content().string(not(containsString(phone.getValue()))))
            .andReturn()
            .getResponse()
            .getContentAsString();
    String phonesRow = page.substring(page.indexOf("Android"));
    Matcher mark = MARK.matcher(phonesRow);
    assertThat(mark.find()).isTrue();
    mvc.perform(post("/people/devices/{mark}/end", mark.group(1)).with(csrf()).cookie(desk))
        .andExpect(redirectedUrl("/people/devices"));
    mvc.perform(get("/people/devices").cookie(phone)).andExpect(status().is3xxRedirection());
    mvc.perform(get("/people/devices").cookie(desk)).andExpect(status().isOk());
  }

  @Test
  void only_a_phone_that_is_remembered_keeps_its_cookie() throws Exception {
    assertThat(signIn(PHONE, true).getMaxAge()).isGreaterThan(30 * 24 * 3600 - 60);
    assertThat(signIn(DESK, false).getMaxAge()).isNegative();
  }

  @ParameterizedTest
  @CsvSource({
    "Mozilla/5.0 (Linux; Android 15) AppleWebKit, Android",
    "Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X), iPhone",
    "Mozilla/5.0 (Windows NT 10.0; Win64; x64), Windows",
    "<script>, not known"
  })
  void a_browser_says_what_it_runs_on(String userAgent, String system) {
    assertThat(SignedInFrom.system(userAgent)).isEqualTo(system);
  }

  private Cookie signIn(String userAgent, boolean remember) throws Exception {
    var form =
        post("/sign-in")
            .param("username", name)
            .param("password", PASSWORD)
            .header("User-Agent", userAgent)
            .with(csrf());
    MockHttpServletResponse response =
        mvc.perform(remember ? form.param("remember", "true") : form).andReturn().getResponse();
    return Objects.requireNonNull(response.getCookie("SESSION"));
  }
}
