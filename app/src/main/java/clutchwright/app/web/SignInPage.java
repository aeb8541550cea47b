package clutchwright.app.web;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// Asks other devices for the owner's password. The answer is checked by [Security].
@Controller
class SignInPage {

    static final String PATH = "/sign-in";

    private final OwnerPassword password;
    private final Visitors visitors;

    SignInPage(OwnerPassword password, Visitors visitors) {
        this.password = password;
        this.visitors = visitors;
    }

    @GetMapping(PATH)
    Reply ask(HttpServletRequest request) {
        if (visitors.isAtHome(request)) {
            return Reply.go("/");
        }
        return password.isSet()
                ? Reply.show(new SignInView(""))
                : new Reply.Show(HttpStatus.FORBIDDEN, Notice.onlyHere());
    }
}
