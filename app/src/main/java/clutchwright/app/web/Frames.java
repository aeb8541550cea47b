package clutchwright.app.web;

import clutchwright.app.wording.Formats;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.springframework.http.HttpMethod;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.servlet.support.RequestContextUtils;

/// Puts the frame around a view: what is known of the request and of the keeper's preferences.
final class Frames {

    private static final Frame.Csrf NO_TOKEN = new Frame.Csrf("_csrf", "X-CSRF-TOKEN", "");

    private final Preferring preferring;
    private final Assets assets;
    private final Figures figures;
    private final Entering entering;
    private final Supplier<Set<String>> pathsThatExist;

    Frames(
            Preferring preferring,
            Figures figures,
            Entering entering,
            Assets assets,
            Supplier<Set<String>> pathsThatExist) {
        this.preferring = preferring;
        this.figures = figures;
        this.entering = entering;
        this.assets = assets;
        this.pathsThatExist = pathsThatExist;
    }

    Frame around(View view, HttpServletRequest request) {
        return new Frame(
                view.title(),
                view.section(),
                sections(),
                flash(request),
                csrf(request),
                new Formats(preferring.preferences()),
                assets,
                found(request),
                request.getUserPrincipal() != null,
                figures.state(),
                SignInPage.PATH.equals(request.getServletPath()) ? "" : entering.house(),
                entering.today());
    }

    private List<Section> sections() {
        var exist = pathsThatExist.get();
        return Arrays.stream(Section.values()).filter(s -> exist.contains(s.path())).toList();
    }

    /// Only where a page is asked for: the parameters of what was posted may be unreadable, and
    /// the page that says so must still be drawn.
    private static String found(HttpServletRequest request) {
        return HttpMethod.GET.matches(request.getMethod())
                ? Optional.ofNullable(request.getParameter("find")).orElse("")
                : "";
    }

    private static Optional<Flash> flash(HttpServletRequest request) {
        var kept = RequestContextUtils.getInputFlashMap(request);
        return kept != null && kept.get(ReplyWriter.FLASH) instanceof Flash flash
                ? Optional.of(flash)
                : Optional.empty();
    }

    private static Frame.Csrf csrf(HttpServletRequest request) {
        return request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token
                ? new Frame.Csrf(token.getParameterName(), token.getHeaderName(), token.getToken())
                : NO_TOKEN;
    }
}
