package clutchwright.app.settings;

import clutchwright.records.exchange.ImportOutcome;
import clutchwright.records.exchange.Progress;
import clutchwright.records.store.ChangeId;
import java.util.Optional;
import java.util.function.Function;

/// An import on its way: asked how far it is by pages, while a thread of its own carries it out.
final class ImportJob implements Progress {

    /// Where it stands.
    sealed interface State {

        /// @param total zero until it is known
        record Running(int done, int total, boolean stopping) implements State {}

        /// @param change by which it can be taken back; empty where nothing was written
        record Over(ImportOutcome outcome, Optional<ChangeId> change) implements State {}

        /// A fault of the program, or of the disk; nothing was changed.
        record Failed() implements State {}
    }

    private volatile State state = new State.Running(0, 0, false);
    private volatile boolean stop;

    /// @param work hears the progress, and says what came of it
    static ImportJob start(Function<Progress, State.Over> work, Runnable afterwards) {
        var job = new ImportJob();
        Thread.ofPlatform().daemon().name("import").start(() -> job.run(work, afterwards));
        return job;
    }

    private void run(Function<Progress, State.Over> work, Runnable afterwards) {
        try {
            state = work.apply(this);
        } catch (RuntimeException | Error fault) {
            state = new State.Failed();
            // The thread ends here in any case; its handler prints the fault to the terminal.
            throw fault;
        } finally {
            afterwards.run();
        }
    }

    State state() {
        return state;
    }

    boolean isRunning() {
        return state instanceof State.Running;
    }

    /// Asks it to end at the next row; then nothing is changed.
    void stop() {
        stop = true;
    }

    @Override
    public boolean reached(int done, int total) {
        state = new State.Running(done, total, stop);
        return !stop;
    }
}
