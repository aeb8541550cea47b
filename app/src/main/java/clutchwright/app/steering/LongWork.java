package clutchwright.app.steering;

import clutchwright.app.web.Reply;
import clutchwright.app.web.Section;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Function;

/// Work that takes longer than a page may: a thread of its own does it, pages ask how far it is,
/// and whoever waits may stop it and take the best so far.
public final class LongWork {

    private final String key;
    private final String title;
    private final Section section;
    private final InstantSource clock;
    private final Object guard = new Object();

    private State state = new State.Running("Beginning", Optional.empty(), false);
    private Optional<Lasting> lasting = Optional.empty();
    private Optional<Runnable> interrupt = Optional.empty();
    private boolean stop;

    /// Where it stands.
    public sealed interface State {

        /// @param share done, 0 to 1, where it is known
        record Running(String said, Optional<Double> share, boolean stopping) implements State {}

        /// @param going where what came of it is shown
        record Over(Reply.Go going) implements State {}

        /// A fault of the program; nothing was changed.
        record Failed() implements State {}
    }

    private record Lasting(Instant since, Duration most) {}

    private LongWork(String key, String title, Section section, InstantSource clock) {
        this.key = key;
        this.title = title;
        this.section = section;
        this.clock = clock;
    }

    /// What the work itself hears and says.
    public final class Watch {

        private Watch() {}

        /// How far it is from the end is not known.
        ///
        /// @return whether to go on
        public boolean goOn(String said) {
            synchronized (guard) {
                lasting = Optional.empty();
                state = new State.Running(said, Optional.empty(), stop);
                return !stop;
            }
        }

        /// @param share done, 0 to 1
        /// @return whether to go on
        public boolean goOn(String said, double share) {
            synchronized (guard) {
                lasting = Optional.empty();
                state = new State.Running(said, Optional.of(share), stop);
                return !stop;
            }
        }

        /// Says what is done now, which takes no longer than that.
        ///
        /// @return whether to go on
        public boolean lasting(String said, Duration most) {
            synchronized (guard) {
                lasting = Optional.of(new Lasting(clock.instant(), most));
                state = new State.Running(said, Optional.of(0.0), stop);
                return !stop;
            }
        }

        public boolean isStopped() {
            synchronized (guard) {
                return stop;
            }
        }

        /// Has that run as soon as somebody stops the work, or now if somebody has.
        public void whenStopped(Runnable task) {
            boolean now;
            synchronized (guard) {
                interrupt = Optional.of(task);
                now = stop;
            }
            if (now) {
                task.run();
            }
        }

        /// Nothing is there to be interrupted any more.
        public void isPast() {
            synchronized (guard) {
                interrupt = Optional.empty();
            }
        }
    }

    /// @param key of which one at a time is done
    /// @param work gives the page that shows what came of it
    static LongWork start(
            String key,
            String title,
            Section section,
            InstantSource clock,
            Function<Watch, Reply.Go> work) {
        var started = new LongWork(key, title, section, clock);
        Thread.ofPlatform().daemon().name(key).start(() -> started.run(work));
        return started;
    }

    private void run(Function<Watch, Reply.Go> work) {
        State end = new State.Failed();
        try {
            end = new State.Over(work.apply(new Watch()));
        } finally {
            synchronized (guard) {
                interrupt = Optional.empty();
                state = end;
                guard.notifyAll();
            }
        }
    }

    /// Waits until it is over, no longer than that: what is done at once needs no page of its own.
    void await(Duration most) {
        var end = System.nanoTime() + most.toNanos();
        synchronized (guard) {
            try {
                for (var left = most.toMillis(); isRunning() && left > 0; ) {
                    guard.wait(left);
                    left = (end - System.nanoTime()) / 1_000_000;
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    public State state() {
        synchronized (guard) {
            if (state instanceof State.Running(var said, _, _) && lasting.isPresent()) {
                var gone = Duration.between(lasting.get().since(), clock.instant()).toMillis();
                var most = Math.max(1, lasting.get().most().toMillis());
                return new State.Running(
                        said, Optional.of(Math.min(1.0, (double) gone / most)), stop);
            }
            return state;
        }
    }

    boolean isRunning() {
        synchronized (guard) {
            return state instanceof State.Running;
        }
    }

    /// Asks it to end with the best so far.
    void stop() {
        Optional<Runnable> task;
        synchronized (guard) {
            stop = true;
            task = interrupt;
        }
        task.ifPresent(Runnable::run);
    }

    String key() {
        return key;
    }

    String title() {
        return title;
    }

    Section section() {
        return section;
    }
}
