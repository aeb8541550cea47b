package clutchwright.app.loggers;

import clutchwright.records.incubators.Reading;
import clutchwright.records.incubators.Sensor;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// What a message of a sensor says: a number alone, or JSON with the temperature in a member and,
/// where the sender has a clock, the time in another.
///
/// @param retained whether the broker kept it for whoever comes later: without a time of its own it
///     may be of any age
record Message(String text, boolean retained) {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final List<String> TIMES = List.of("time", "timestamp", "at");
    private static final double COLDEST = -10;
    private static final double HOTTEST = 60;
    private static final long MILLISECONDS_FROM = 100_000_000_000L;

    static Message of(byte[] payload, boolean retained) {
        return new Message(new String(payload, StandardCharsets.UTF_8).strip(), retained);
    }

    /// Nothing where it says nothing that a room can have.
    ///
    /// @param now when it came, for a sender without a clock
    Optional<Reading> reading(Sensor sensor, Instant now) {
        var member = sensor.source().member();
        if (member.isBlank()) {
            return retained ? Optional.empty() : plausible(sensor, LogValues.number(text), now);
        }
        try {
            var node = JSON.readTree(text);
            var at = time(node);
            return at.isEmpty() && retained
                    ? Optional.empty()
                    : plausible(sensor, number(node.path(member)), at.orElse(now));
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    private static Optional<Reading> plausible(Sensor sensor, OptionalDouble said, Instant at) {
        return said.stream()
                .map(sensor::celsius)
                .filter(celsius -> celsius > COLDEST && celsius < HOTTEST)
                .mapToObj(celsius -> new Reading(at, celsius))
                .findFirst();
    }

    private static OptionalDouble number(JsonNode node) {
        if (node.isNumber()) {
            return OptionalDouble.of(node.doubleValue());
        }
        return node.isString() ? LogValues.number(node.stringValue()) : OptionalDouble.empty();
    }

    private static Optional<Instant> time(JsonNode node) {
        return TIMES.stream().map(node::path).flatMap(each -> instant(each).stream()).findFirst();
    }

    private static Optional<Instant> instant(JsonNode node) {
        if (node.isIntegralNumber()) {
            var number = node.longValue();
            return Optional.of(
                    number >= MILLISECONDS_FROM
                            ? Instant.ofEpochMilli(number)
                            : Instant.ofEpochSecond(number));
        }
        if (!node.isString()) {
            return Optional.empty();
        }
        try {
            return Optional.of(OffsetDateTime.parse(node.stringValue()).toInstant());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
