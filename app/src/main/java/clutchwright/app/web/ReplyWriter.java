package clutchwright.app.web;

import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpStatus;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodReturnValueHandler;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.support.RequestContextUtils;

/// Turns a [Reply] into what goes over the wire.
public final class ReplyWriter implements HandlerMethodReturnValueHandler {

    static final String FLASH = "flash";

    /// The attribute of a request that holds where its page went.
    static final String GONE = "clutchwright.gone";

    /// Sent by a phone that sends what it kept while its keeper looks at another page: a sentence
    /// there about what was done then would surprise.
    private static final String LATER = "Entry-Later";

    private final TemplateEngine templates;
    private final Frames frames;

    ReplyWriter(TemplateEngine templates, Frames frames) {
        this.templates = templates;
        this.frames = frames;
    }

    @Override
    public boolean supportsReturnType(MethodParameter returnType) {
        return Reply.class.isAssignableFrom(returnType.getParameterType());
    }

    @Override
    public void handleReturnValue(
            @Nullable Object reply,
            MethodParameter returnType,
            @Nullable ModelAndViewContainer container,
            NativeWebRequest web)
            throws IOException {
        if (container != null) {
            container.setRequestHandled(true);
        }
        var request = web.getNativeRequest(HttpServletRequest.class);
        var response = web.getNativeResponse(HttpServletResponse.class);
        if (request == null || response == null || !(reply instanceof Reply answer)) {
            throw new IllegalStateException("a page answered nothing to " + web);
        }
        answer(answer, request, response);
    }

    /// Writes what a page replied, and marks it as an answer to the entry that it was sent.
    void answer(Reply reply, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        if (request.getAttribute(EntryFilter.TAKEN) instanceof String key) {
            response.setHeader(EntryFilter.TAKEN, key);
            request.setAttribute(GONE, reply);
        }
        write(reply, request, response);
    }

    /// Writes a reply where no page was reached, as in the filters.
    public void write(Reply reply, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        switch (reply) {
            case Reply.Show(var status, var view) -> show(status, view, request, response);
            case Reply.Go go -> go(go, request, response);
        }
    }

    private void show(
            HttpStatus status, View view, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        // Drawn before the first byte is sent, so that a fault in a template is a plain 500.
        var drawn = new Utf8ByteOutput();
        templates.render(
                view.template(),
                Map.of("view", view, "frame", frames.around(view, request)),
                drawn);
        response.setStatus(status.value());
        response.setContentType("text/html;charset=UTF-8");
        response.setContentLength(drawn.getContentLength());
        drawn.writeTo(response.getOutputStream()::write);
    }

    private static void go(Reply.Go go, HttpServletRequest request, HttpServletResponse response) {
        go.flash()
                .filter(_ -> request.getHeader(LATER) == null)
                .ifPresent(
                        flash -> {
                            RequestContextUtils.getOutputFlashMap(request).put(FLASH, flash);
                            RequestContextUtils.saveOutputFlashMap(go.path(), request, response);
                        });
        // A live piece that htmx fetched follows this header; a plain form follows Location.
        if (request.getHeader("HX-Request") != null) {
            response.setStatus(HttpStatus.NO_CONTENT.value());
            response.setHeader("HX-Redirect", go.path());
        } else {
            response.setStatus(HttpStatus.SEE_OTHER.value());
            response.setHeader("Location", go.path());
        }
    }
}
