package clutchwright.app.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.servlet.HandlerInterceptor;

/// Answers a form that arrives again as it was answered at first, and lets no page see it.
final class EnteredBefore implements HandlerInterceptor {

    private final Entering entering;
    private final ReplyWriter replies;

    EnteredBefore(Entering entering, ReplyWriter replies) {
        this.entering = entering;
        this.replies = replies;
    }

    @Override
    public boolean preHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler)
            throws IOException {
        return !answer(request, response);
    }

    /// @return whether something was written under the key of the form, and so answered
    boolean answer(HttpServletRequest request, HttpServletResponse response) throws IOException {
        if (!(request.getAttribute(EntryFilter.TAKEN) instanceof String key)) {
            return false;
        }
        var before = entering.answered(key);
        if (before.isEmpty()) {
            return false;
        }
        replies.answer(before.get(), request, response);
        // What was answered at first stays what is remembered.
        request.removeAttribute(ReplyWriter.GONE);
        return true;
    }
}
