package clutchwright.app.today;

import clutchwright.app.web.Reply;
import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// The screen that opens first: what there is to do now.
@Controller
public class TodayPage {

    private final Clock clock;

    TodayPage(Clock clock) {
        this.clock = clock;
    }

    @GetMapping("/")
    public Reply show() {
        return Reply.show(new TodayView(LocalDate.now(clock)));
    }
}
