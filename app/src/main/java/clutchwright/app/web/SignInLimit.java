package clutchwright.app.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/// Slows down whoever guesses at the password: so many wrong ones from one address, and so many
/// from all, within a while.
final class SignInLimit {

    static final int PER_ADDRESS = 5;
    static final int OVERALL = 30;
    static final Duration WHILE = Duration.ofMinutes(15);

    private final Clock clock;
    private final Deque<Instant> all = new ArrayDeque<>();
    private final Map<String, Deque<Instant>> byAddress = new HashMap<>();

    SignInLimit(Clock clock) {
        this.clock = clock;
    }

    /// How long this address must still wait; empty where it may try now.
    synchronized Optional<Duration> wait(String address) {
        forgetOld();
        var own = byAddress.getOrDefault(address, new ArrayDeque<>());
        return waitFor(own, PER_ADDRESS).or(() -> waitFor(all, OVERALL));
    }

    synchronized void failed(String address) {
        forgetOld();
        var now = clock.instant();
        all.addLast(now);
        byAddress.computeIfAbsent(address, a -> new ArrayDeque<>()).addLast(now);
    }

    synchronized void succeeded(String address) {
        byAddress.remove(address);
    }

    private Optional<Duration> waitFor(Deque<Instant> failures, int limit) {
        return failures.size() < limit
                ? Optional.empty()
                : Optional.of(Duration.between(clock.instant(), failures.getFirst().plus(WHILE)));
    }

    private void forgetOld() {
        var before = clock.instant().minus(WHILE);
        all.removeIf(then -> !then.isAfter(before));
        byAddress.values().forEach(own -> own.removeIf(then -> !then.isAfter(before)));
        byAddress.values().removeIf(Deque::isEmpty);
    }
}
