package clutchwright.app.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.web.filter.OncePerRequestFilter;

/// Takes the key off a form that has one, so that what its page writes is written under it, and
/// keeps what the page answered. [EnteredBefore] answers a form that arrives again.
///
/// What is answered to a form with a key bears the key in a header: only then does a phone forget
/// the entry. A page of sign-in, or of another program, is no such answer.
final class EntryFilter extends OncePerRequestFilter {

    static final String TAKEN = "Entry-Taken";

    private final Entering entering;
    private final EnteredBefore before;

    EntryFilter(Entering entering, EnteredBefore before) {
        this.entering = entering;
        this.before = before;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !HttpMethod.POST.matches(request.getMethod())
                || !Optional.ofNullable(request.getContentType())
                        .orElse("")
                        .startsWith(MediaType.APPLICATION_FORM_URLENCODED_VALUE);
    }

    @Override
    protected void doFilterInternal(
            HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var key = Optional.ofNullable(request.getParameter(Entering.FIELD)).orElse("");
        if (key.isEmpty()) {
            chain.doFilter(request, response);
            return;
        }
        request.setAttribute(TAKEN, key);
        if (!proceed(key, () -> chain.doFilter(request, response))) {
            var _ = before.answer(request, response);
        } else if (request.getAttribute(ReplyWriter.GONE) instanceof Reply.Go went) {
            entering.answer(key, went);
        }
    }

    /// @return whether nobody else wrote under the key meanwhile
    private static boolean proceed(String key, Rest rest) throws ServletException, IOException {
        try {
            ScopedValue.where(EntryInHand.NOW, new EntryInHand(key))
                    .call(
                            () -> {
                                rest.go();
                                return true;
                            });
            return true;
        } catch (ServletException | IOException | RuntimeException e) {
            if (e.getCause() instanceof EntryInHand.WrittenMeanwhile) {
                return false;
            }
            throw e;
        } catch (Exception e) {
            throw new ServletException(e);
        }
    }

    /// What remains to be done of the request.
    @FunctionalInterface
    private interface Rest {
        void go() throws ServletException, IOException;
    }
}
