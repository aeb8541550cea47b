package clutchwright.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// Asks other devices for the owner's password. The answer is checked by [Security].
@Controller
class SignInPage {

    static final String PATH = "/sign-in";

    private static final int LONGEST = 2000;

    private final OwnerPassword password;
    private final Visitors visitors;

    SignInPage(OwnerPassword password, Visitors visitors) {
        this.password = password;
        this.visitors = visitors;
    }

    @GetMapping(PATH)
    Reply ask(HttpServletRequest request) {
        if (visitors.isAtHome(request)) {
            return Reply.go(next(request));
        }
        return password.isSet()
                ? Reply.show(new SignInView("", next(request)))
                : new Reply.Show(HttpStatus.FORBIDDEN, Notice.onlyHere());
    }

    /// The way to the page that asks for the password, and from there to where one was going.
    ///
    /// What was being sent is not sent again: only pages are gone on to.
    static String pathFor(HttpServletRequest request) {
        if (!HttpMethod.GET.matches(request.getMethod())
                || request.getHeader("HX-Request") != null) {
            return PATH;
        }
        var query = request.getQueryString();
        var wanted = request.getRequestURI() + (query == null ? "" : "?" + query);
        return wanted.equals("/") || wanted.length() > LONGEST || !isPathOfThisSite(wanted)
                ? PATH
                : PATH + "?next=" + URLEncoder.encode(wanted, StandardCharsets.UTF_8);
    }

    /// Where to go once signed in: only ever a page of this site.
    static String next(HttpServletRequest request) {
        return Optional.ofNullable(request.getParameter("next"))
                .filter(SignInPage::isPathOfThisSite)
                .orElse("/");
    }

    /// Browsers read `//` and `/\\` as the beginning of another site's name.
    private static boolean isPathOfThisSite(String path) {
        return path.length() <= LONGEST
                && path.matches("/(?![/\\\\])[\\x21-\\x7e&&[^\\\\]]*")
                && !path.startsWith(PATH);
    }
}
