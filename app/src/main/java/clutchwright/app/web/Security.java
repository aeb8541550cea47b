package clutchwright.app.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.ProviderManager;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.Authentication;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.UsernamePasswordAuthenticationFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.XorCsrfTokenRequestAttributeHandler;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.web.filter.OncePerRequestFilter;

/// Who may come in, and what browsers are told not to do.
@Configuration(proxyBeanMethods = false)
class Security {

    private static final String CONTENT_POLICY =
            "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
                    + " font-src 'self'; object-src 'none'; base-uri 'none';"
                    + " frame-ancestors 'none'; form-action 'self'";

    private static final String[] OPEN_TO_ALL = {
        "/clutchwright.css",
        "/parts.css",
        "/clutchwright.js",
        "/waiting*.js",
        "/icon.svg",
        "/fonts/*",
        "/vendor/*"
    };

    @Bean
    PasswordEncoder passwordEncoder() {
        return new BCryptPasswordEncoder(12);
    }

    @Bean
    OwnerPassword ownerPassword(Preferring preferring, PasswordEncoder encoder) {
        return new OwnerPassword(preferring, encoder);
    }

    @Bean
    AuthenticationManager authenticationManager(OwnerPassword password) {
        return new ProviderManager(password);
    }

    @Bean
    SignInLimit signInLimit(Clock clock) {
        return new SignInLimit(clock);
    }

    @Bean
    SecurityFilterChain gate(
            HttpSecurity http,
            Visitors visitors,
            OwnerPassword password,
            SignInLimit limit,
            ReplyWriter replies) {
        // The token lives in a cookie, not in the session, so that a form left open on a phone
        // overnight, or over a restart, can still be sent.
        var tokens = new CookieCsrfTokenRepository();
        tokens.setCookieCustomizer(cookie -> cookie.sameSite("Strict").httpOnly(true));
        tokens.setCookieName("clutchwright-form");
        return http.csrf(
                        csrf ->
                                csrf.csrfTokenRepository(tokens)
                                        .csrfTokenRequestHandler(
                                                new XorCsrfTokenRequestAttributeHandler()))
                .authorizeHttpRequests(
                        requests ->
                                requests.requestMatchers(OPEN_TO_ALL)
                                        .permitAll()
                                        .requestMatchers(SignInPage.PATH, "/error")
                                        .permitAll()
                                        // Who has the secret address may read, nothing else.
                                        .requestMatchers(HttpMethod.GET, "/calendar/*.ics")
                                        .permitAll()
                                        .anyRequest()
                                        .access(
                                                (who, context) ->
                                                        new AuthorizationDecision(
                                                                visitors.isAtHome(
                                                                                context
                                                                                        .getRequest())
                                                                        || isOwner(who.get()))))
                .formLogin(
                        form ->
                                form.loginPage(SignInPage.PATH)
                                        .usernameParameter("who")
                                        .successHandler(
                                                (request, response, who) -> {
                                                    limit.succeeded(request.getRemoteAddr());
                                                    replies.write(
                                                            Reply.go(SignInPage.next(request)),
                                                            request,
                                                            response);
                                                })
                                        .failureHandler(
                                                (request, response, failure) -> {
                                                    limit.failed(request.getRemoteAddr());
                                                    replies.write(
                                                            refusal(
                                                                    HttpStatus.UNAUTHORIZED,
                                                                    "That is not the password.",
                                                                    request),
                                                            request,
                                                            response);
                                                }))
                .logout(logout -> logout.logoutUrl("/sign-out").logoutSuccessUrl(SignInPage.PATH))
                .exceptionHandling(
                        refused ->
                                refused.authenticationEntryPoint(
                                                (request, response, why) ->
                                                        replies.write(
                                                                password.isSet()
                                                                        ? Reply.go(
                                                                                SignInPage.pathFor(
                                                                                        request))
                                                                        : onlyHere(),
                                                                request,
                                                                response))
                                        .accessDeniedHandler(
                                                (request, response, why) ->
                                                        replies.write(
                                                                new Reply.Show(
                                                                        HttpStatus.FORBIDDEN,
                                                                        Notice.notAllowed()),
                                                                request,
                                                                response)))
                .requestCache(cache -> cache.disable())
                .headers(
                        headers ->
                                headers.contentSecurityPolicy(
                                                policy -> policy.policyDirectives(CONTENT_POLICY))
                                        .referrerPolicy(
                                                policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
                                        .frameOptions(frame -> frame.deny())
                                        .permissionsPolicyHeader(
                                                policy ->
                                                        policy.policy(
                                                                "geolocation=(), microphone=(),"
                                                                        + " payment=()")))
                .addFilterBefore(
                        new Waiting(limit, replies), UsernamePasswordAuthenticationFilter.class)
                .build();
    }

    private static boolean isOwner(Authentication who) {
        return who != null
                && who.getAuthorities().stream()
                        .anyMatch(role -> "ROLE_OWNER".equals(role.getAuthority()));
    }

    private static Reply onlyHere() {
        return new Reply.Show(HttpStatus.FORBIDDEN, Notice.onlyHere());
    }

    private static Reply refusal(HttpStatus status, String trouble, HttpServletRequest request) {
        return new Reply.Show(status, new SignInView(trouble, SignInPage.next(request)));
    }

    /// Turns away an address that has guessed too often, before the password is even looked at.
    private static final class Waiting extends OncePerRequestFilter {

        private final SignInLimit limit;
        private final ReplyWriter replies;

        private Waiting(SignInLimit limit, ReplyWriter replies) {
            this.limit = limit;
            this.replies = replies;
        }

        @Override
        protected boolean shouldNotFilter(HttpServletRequest request) {
            return !HttpMethod.POST.matches(request.getMethod())
                    || !SignInPage.PATH.equals(request.getServletPath());
        }

        @Override
        protected void doFilterInternal(
                HttpServletRequest request, HttpServletResponse response, FilterChain chain)
                throws ServletException, IOException {
            var wait = limit.wait(request.getRemoteAddr());
            if (wait.isPresent()) {
                response.setHeader("Retry-After", Long.toString(wait.get().toSeconds() + 1));
                replies.write(
                        refusal(HttpStatus.TOO_MANY_REQUESTS, tooOften(wait.get()), request),
                        request,
                        response);
            } else {
                chain.doFilter(request, response);
            }
        }

        private static String tooOften(Duration wait) {
            return "Too many wrong passwords. Try again in %d minutes."
                    .formatted(wait.toMinutes() + 1);
        }
    }
}
