package clutchwright.app.steering;

import clutchwright.app.web.Reply;
import clutchwright.app.web.Section;
import java.time.Clock;
import java.time.Duration;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/// The long work that is under way, and the last that is over.
public final class WorkDesk implements AutoCloseable {

    private static final int KEPT = 30;

    /// What is done within that goes straight to its page.
    private static final Duration PATIENCE = Duration.ofMillis(400);

    private final Clock clock;
    private final Map<Long, LongWork> works = new LinkedHashMap<>();
    private long last;

    public WorkDesk(Clock clock) {
        this.clock = clock;
    }

    /// Begins it, or joins it where the same is under way.
    ///
    /// @param key of which one at a time is done
    /// @param title what is done, as a page's heading
    /// @param work gives the page that shows what came of it
    /// @return the page to go to now
    public Reply.Go start(
            String key, String title, Section section, Function<LongWork.Watch, Reply.Go> work) {
        var begun = begin(key, title, section, work);
        begun.work().await(PATIENCE);
        return begun.work().state() instanceof LongWork.State.Over(var going)
                ? going
                : Reply.go("/progress/" + begun.id());
    }

    private record Begun(long id, LongWork work) {}

    private synchronized Begun begin(
            String key, String title, Section section, Function<LongWork.Watch, Reply.Go> work) {
        for (var each : works.entrySet()) {
            if (each.getValue().key().equals(key) && each.getValue().isRunning()) {
                return new Begun(each.getKey(), each.getValue());
            }
        }
        forget();
        last++;
        var started = LongWork.start(key, title, section, clock, work);
        works.put(last, started);
        return new Begun(last, started);
    }

    private void forget() {
        Iterator<LongWork> oldest = works.values().iterator();
        while (works.size() >= KEPT && oldest.hasNext()) {
            if (!oldest.next().isRunning()) {
                oldest.remove();
            }
        }
    }

    synchronized Optional<LongWork> find(long id) {
        return Optional.ofNullable(works.get(id));
    }

    @Override
    public synchronized void close() {
        works.values().forEach(LongWork::stop);
    }
}
