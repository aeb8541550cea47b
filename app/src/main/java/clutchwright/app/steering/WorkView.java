package clutchwright.app.steering;

import clutchwright.app.web.Section;
import clutchwright.app.web.View;
import java.util.Optional;

/// How far long work is.
///
/// @param percent done, where it is known
/// @param said what is done now
/// @param piece whether only the bar is shown
public record WorkView(
        long id,
        String title,
        Optional<Section> section,
        Optional<Integer> percent,
        String said,
        boolean stopping,
        boolean piece)
        implements View {

    static WorkView of(long id, LongWork work, LongWork.State.Running running, boolean piece) {
        return new WorkView(
                id,
                work.title(),
                Optional.of(work.section()),
                running.share().map(share -> (int) Math.floor(100 * share)),
                running.stopping() ? "Stopping" : running.said(),
                running.stopping(),
                piece);
    }

    @Override
    public String template() {
        return piece ? "steering/bar.jte" : "steering/work.jte";
    }
}
