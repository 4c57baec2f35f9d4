package dev.flangewright.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestBuilders.formLogin;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;
import static org.springframework.security.test.web.servlet.response.SecurityMockMvcResultMatchers.authenticated;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.flangewright.testing.DatabaseTest;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** One-time, short-lived invitations: OWASP ASVS 5.0, 6.4.1. */
@DatabaseTest
class InviteTest {

  private static final Pattern LINK =
      Pattern.compile("value=\"http://localhost(/invitation/[\\w-]+)\"");
  private static final String PASSWORD = "tailor candle wagon";

  @Autowired MockMvc mvc;
  @Autowired Invite invite;
  @Autowired KeepAccounts accounts;
  @Autowired ShopClock clock;

  private final String name = "guest of " + UUID.randomUUID().toString().substring(0, 8);

  @BeforeEach
  void anAccount() {
    if (accounts.nobodyYet()) {
      accounts.first("lead", PASSWORD);
    }
  }

  @Test
  void a_link_makes_one_account_of_the_role_chosen_and_then_no_other() throws Exception {
    String link = link();
    mvc.perform(get(link))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("fitter")));
    mvc.perform(accept(link, name, "password1234"))
        .andExpect(status().is(422))
        .andExpect(content().string(containsString("guessed first")));
    mvc.perform(accept(link, name, PASSWORD)).andExpect(redirectedUrl("/sign-in?invited"));
    mvc.perform(formLogin("/sign-in").user(name).password(PASSWORD)).andExpect(authenticated());
    mvc.perform(accept(link, name + " 2", PASSWORD)).andExpect(status().isGone());
    mvc.perform(get(link)).andExpect(status().isGone());
  }

  @Test
  void a_link_is_good_for_72_hours() throws Exception {
    AtomicReference<String> old = new AtomicReference<>("");
    clock.at(
        Instant.now().minus(73, ChronoUnit.HOURS),
        () -> SignedIn.as("lead", Role.LEAD, () -> old.set(invite.to(Role.GUEST))));
    mvc.perform(get("/invitation/" + old.get())).andExpect(status().isGone());
    mvc.perform(accept("/invitation/" + old.get(), name, PASSWORD)).andExpect(status().isGone());
  }

  @Test
  void a_withdrawn_invitation_and_a_made_up_one_are_no_good() throws Exception {
    String link = link();
    SignedIn.as("lead", Role.LEAD, () -> invite.open().forEach(one -> invite.withdraw(one.id())));
    mvc.perform(get(link)).andExpect(status().isGone());
    mvc.perform(get("/invitation/made-up")).andExpect(status().isGone());
  }

  @Test
  void only_a_lead_invites_and_nobody_reads_the_link_again() throws Exception {
    mvc.perform(
            post("/people/invitations")
                .param("role", "LEAD")
                .with(csrf())
                .with(
                    user("m")
                        .authorities(
                            AuthorityUtils.createAuthorityList(Role.MANAGER.authorities()))))
        .andExpect(status().isForbidden());
    String link = link();
    mvc.perform(get("/people/invitations").with(lead()))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString(link))));
  }

  private String link() throws Exception {
    String page =
        mvc.perform(post("/people/invitations").param("role", "FITTER").with(csrf()).with(lead()))
            .andReturn()
            .getResponse()
            .getContentAsString();
    Matcher found = LINK.matcher(page);
    assertThat(found.find()).as(page).isTrue();
    return found.group(1);
  }

  private static MockHttpServletRequestBuilder accept(String link, String name, String password) {
    return post(link).param("name", name).param("password", password).with(csrf());
  }

  private static org.springframework.test.web.servlet.request.RequestPostProcessor lead() {
    return user("lead").authorities(AuthorityUtils.createAuthorityList(Role.LEAD.authorities()));
  }
}
