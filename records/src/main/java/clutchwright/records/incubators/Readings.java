package clutchwright.records.incubators;

import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// What the sensors said.
///
/// A reading that comes twice counts once, so that a sender in doubt may send again.
public final class Readings {

    /// A file's readings count while the file is on record.
    private static final String COUNTING =
            " from reading where sensor = ? and (log_file = 0"
                    + " or log_file in (select id from log_file where sensor = reading.sensor))";

    private static final String ADD =
            "insert into reading (sensor, at, log_file, celsius) values (?, ?, ?, ?)"
                    + " on conflict do nothing";

    private final Transaction tx;

    public Readings(Transaction tx) {
        this.tx = tx;
    }

    /// Takes down what sensors sent, as corrected; no change of the journal.
    public void took(SensorId sensor, List<Reading> readings) {
        add(sensor, 0, readings);
    }

    /// Takes down what a file holds; taken back as one change.
    ///
    /// @param readings at least one
    public LogFile bring(SensorId sensor, String name, List<Reading> readings) {
        var first = readings.stream().map(Reading::at).min(Comparator.naturalOrder()).orElseThrow();
        var last = readings.stream().map(Reading::at).max(Comparator.naturalOrder()).orElseThrow();
        long id =
                tx.insert(
                        "log_file",
                        Values.of()
                                .set("sensor", sensor.value())
                                .set("name", name)
                                .set("readings", readings.size())
                                .set("first_at", first.getEpochSecond())
                                .set("last_at", last.getEpochSecond()));
        add(sensor, id, readings);
        return new LogFile(id, sensor, name, readings.size(), first, last);
    }

    private void add(SensorId sensor, long file, List<Reading> readings) {
        tx.log(
                ADD,
                readings.stream()
                        .map(
                                reading ->
                                        List.<Object>of(
                                                sensor.value(),
                                                reading.at().getEpochSecond(),
                                                file,
                                                reading.celsius()))
                        .toList());
    }

    public Optional<Reading> latest(SensorId sensor) {
        return tx.first(
                Readings::reading,
                "select at, celsius" + COUNTING + " order by at desc limit 1",
                sensor.value());
    }

    /// In the order of their times, from the one moment to the other; both count.
    public List<Reading> between(SensorId sensor, Instant from, Instant to) {
        return tx.list(
                Readings::reading,
                "select at, celsius" + COUNTING + " and at between ? and ? order by at",
                sensor.value(),
                from.getEpochSecond(),
                to.getEpochSecond());
    }

    /// Summed up by stretches of one length, those without a reading left out.
    public List<Stretch> course(SensorId sensor, Instant from, Instant to, Duration length) {
        long seconds = length.toSeconds();
        return tx.list(
                row ->
                        new Stretch(
                                Instant.ofEpochSecond(row.number("part") * seconds),
                                row.real("low"),
                                row.real("mean"),
                                row.real("high")),
                "select at / ? as part, min(celsius) as low, avg(celsius) as mean,"
                        + " max(celsius) as high"
                        + COUNTING
                        + " and at between ? and ? group by 1 order by 1",
                seconds,
                sensor.value(),
                from.getEpochSecond(),
                to.getEpochSecond());
    }

    /// The newest first.
    public List<LogFile> files(SensorId sensor) {
        return tx.list(
                Readings::file,
                "select * from log_file where sensor = ? order by id desc",
                sensor.value());
    }

    private static Reading reading(Row row) {
        return new Reading(Instant.ofEpochSecond(row.number("at")), row.real("celsius"));
    }

    private static LogFile file(Row row) {
        return new LogFile(
                row.number("id"),
                new SensorId(row.number("sensor")),
                row.text("name"),
                row.number("readings"),
                Instant.ofEpochSecond(row.number("first_at")),
                Instant.ofEpochSecond(row.number("last_at")));
    }
}
