package clutchwright.app.web;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// What a phone asks before it sends what it has kept: whether it is let in, into which collection,
/// and with which token.
@Controller
class ReadyPage {

    @GetMapping("/ready")
    Reply show() {
        return Reply.show(new ReadyView());
    }

    record ReadyView() implements View {

        @Override
        public String template() {
            return "web/ready.jte";
        }

        @Override
        public String title() {
            return "Ready";
        }
    }
}
