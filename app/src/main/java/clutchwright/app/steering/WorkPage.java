package clutchwright.app.steering;

import clutchwright.app.web.Reply;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/// How far long work is, and the button that stops it.
@Controller
public class WorkPage {

    private static final String GONE = "This work is over, and what came of it is on its own page.";

    private final WorkDesk desk;

    WorkPage(WorkDesk desk) {
        this.desk = desk;
    }

    @GetMapping("/progress/{id}")
    public Reply show(@PathVariable long id) {
        return onItsWay(id, false);
    }

    /// The bar alone, fetched again and again while it runs.
    @GetMapping("/progress/{id}/bar")
    public Reply bar(@PathVariable long id) {
        return onItsWay(id, true);
    }

    @PostMapping("/progress/{id}/stop")
    public Reply stop(@PathVariable long id) {
        desk.find(id).ifPresent(LongWork::stop);
        return Reply.go("/progress/" + id);
    }

    private Reply onItsWay(long id, boolean piece) {
        return desk.find(id)
                .<Reply>map(
                        work ->
                                switch (work.state()) {
                                    case LongWork.State.Running running ->
                                            Reply.show(WorkView.of(id, work, running, piece));
                                    case LongWork.State.Over(var going) -> going;
                                    case LongWork.State.Failed() ->
                                            Reply.missing(
                                                    "That could not be worked out: a fault of the"
                                                            + " program, which its terminal shows."
                                                            + " Nothing was changed.");
                                })
                .orElseGet(() -> Reply.missing(GONE));
    }
}
