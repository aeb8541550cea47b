package clutchwright.app.holding;

import clutchwright.records.Conclusions;
import clutchwright.records.OnRecord;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/// Works out behind the pages what follows from the records: one computation at a time, and
/// after it the newest records that were asked about meanwhile.
final class Concluding implements AutoCloseable {

    private static final System.Logger LOG = System.getLogger(Concluding.class.getName());

    // A daemon: nobody waits at the end of the day for figures that nobody will read.
    private final ExecutorService worker =
            Executors.newSingleThreadExecutor(
                    task -> Thread.ofPlatform().daemon().name("conclusions").unstarted(task));

    private Optional<Asked> next = Optional.empty();
    private boolean working;
    private boolean failed;
    private long asked = -1;
    private long done = -1;
    private Concluded last = new Concluded(-1, Conclusions.NONE);

    /// @param revision of the records they follow from
    record Concluded(long revision, Conclusions conclusions) {}

    private record Asked(long revision, OnRecord facts) {}

    /// Has what follows from these records worked out, unless that was asked before.
    synchronized void ask(long revision, OnRecord facts) {
        if (revision <= asked) {
            return;
        }
        asked = revision;
        next = Optional.of(new Asked(revision, facts));
        if (!working) {
            working = true;
            worker.execute(this::work);
        }
    }

    private void work() {
        for (var task = take(); task.isPresent(); task = take()) {
            try {
                var found = Conclusions.of(task.get().facts(), last().conclusions());
                finish(task.get().revision(), Optional.of(found));
            } catch (RuntimeException | OutOfMemoryError e) {
                // The pages go on with the figures they have, and say so.
                LOG.log(System.Logger.Level.ERROR, "what follows could not be worked out", e);
                finish(task.get().revision(), Optional.empty());
            }
        }
    }

    private synchronized Optional<Asked> take() {
        var taken = next;
        next = Optional.empty();
        working = taken.isPresent();
        return taken;
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private synchronized void finish(long revision, Optional<Conclusions> found) {
        done = revision;
        failed = found.isEmpty();
        found.ifPresent(conclusions -> last = new Concluded(revision, conclusions));
        notifyAll();
    }

    /// What was worked out last.
    synchronized Concluded last() {
        return last;
    }

    /// Whether anything was worked out since the start.
    synchronized boolean hasBegun() {
        return done >= 0;
    }

    /// Whether the last attempt failed.
    synchronized boolean hasFailed() {
        return failed;
    }

    synchronized boolean isDone() {
        return done >= asked;
    }

    /// Waits for all that was asked, no longer than that.
    ///
    /// @return whether it is there
    synchronized boolean await(Duration patience) {
        var end = System.nanoTime() + patience.toNanos();
        try {
            for (var left = patience.toMillis(); !isDone() && left > 0; ) {
                wait(left);
                left = (end - System.nanoTime()) / 1_000_000;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return isDone();
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
