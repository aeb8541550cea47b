package clutchwright.app.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/// Says in plain words what went wrong, whatever it was.
@Controller
class ErrorPage implements ErrorController {

    @RequestMapping("/error")
    Reply explain(HttpServletRequest request) {
        var status =
                Optional.ofNullable(request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE))
                        .map(code -> HttpStatus.resolve((Integer) code))
                        .orElse(HttpStatus.NOT_FOUND);
        if (status == HttpStatus.NOT_FOUND) {
            return Reply.missing("There is no page at this address.");
        }
        if (status == HttpStatus.CONTENT_TOO_LARGE) {
            return new Reply.Show(status, Notice.tooLarge());
        }
        if (status == HttpStatus.FORBIDDEN) {
            return new Reply.Show(status, Notice.notAllowed());
        }
        return new Reply.Show(
                status, status.is4xxClientError() ? Notice.badRequest() : Notice.fault());
    }
}
