package clutchwright.app.holding;

import clutchwright.app.web.Figures;
import clutchwright.app.web.Reply;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// The quiet line that says whether new figures are there.
@Controller
public class FiguresPage {

    private final Figures figures;

    FiguresPage(Figures figures) {
        this.figures = figures;
    }

    @GetMapping("/figures")
    public Reply show() {
        return Reply.show(new FiguresView(figures.state()));
    }
}
