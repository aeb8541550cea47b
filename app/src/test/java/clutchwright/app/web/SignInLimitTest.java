package clutchwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

/// Guessing at the password is slow.
class SignInLimitTest {

    private final Wristwatch clock = new Wristwatch();
    private final SignInLimit limit = new SignInLimit(clock);

    @Test
    void five_wrong_ones_in_a_quarter_of_an_hour_are_enough_for_one_address() {
        for (int guess = 0; guess < 5; guess++) {
            assertThat(limit.wait("a")).isEmpty();
            limit.failed("a");
        }
        assertThat(limit.wait("a")).contains(Duration.ofMinutes(15));
        assertThat(limit.wait("b")).isEmpty();

        clock.now = clock.now.plus(Duration.ofMinutes(10));
        assertThat(limit.wait("a")).contains(Duration.ofMinutes(5));
        clock.now = clock.now.plus(Duration.ofMinutes(5));
        assertThat(limit.wait("a")).isEmpty();
    }

    @Test
    void thirty_wrong_ones_from_anywhere_are_enough_for_all() {
        for (int guess = 0; guess < 30; guess++) {
            assertThat(limit.wait("address " + guess)).isEmpty();
            limit.failed("address " + guess);
        }
        assertThat(limit.wait("another address")).contains(Duration.ofMinutes(15));
    }

    @Test
    void the_right_one_forgives_the_wrong_ones_before_it() {
        for (int guess = 0; guess < 4; guess++) {
            limit.failed("a");
        }
        limit.succeeded("a");
        limit.failed("a");
        assertThat(limit.wait("a")).isEmpty();
    }

    private static final class Wristwatch extends Clock {
        private Instant now = Instant.parse("2026-06-14T08:00:00Z");

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
