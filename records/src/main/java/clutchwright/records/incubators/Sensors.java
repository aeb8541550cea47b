package clutchwright.records.incubators;

import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Findings;
import clutchwright.records.checks.Problem;
import clutchwright.records.clutches.BoxId;
import clutchwright.records.store.Row;
import clutchwright.records.store.Transaction;
import clutchwright.records.store.Values;
import clutchwright.records.store.Words;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/// The sensors in incubators and boxes.
public final class Sensors {

    private final Transaction tx;

    public Sensors(Transaction tx) {
        this.tx = tx;
    }

    /// @param sensor whose id and version do not count
    public Edit<Sensor> add(Sensor sensor) {
        return problems(sensor, 0)
                .<Sensor>refusal()
                .orElseGet(
                        () ->
                                new Edit.Saved<>(
                                        theSensor(
                                                new SensorId(
                                                        tx.insert("sensor", values(sensor))))));
    }

    public Edit<Sensor> update(Sensor changed) {
        var current = theSensor(changed.id());
        return problems(changed, changed.id().value())
                .<Sensor>refusal()
                .orElseGet(
                        () ->
                                tx.update(
                                                "sensor",
                                                changed.id().value(),
                                                changed.version(),
                                                values(changed))
                                        ? new Edit.Saved<>(theSensor(changed.id()))
                                        : new Edit.Stale<>(current));
    }

    /// With its files. Its readings stay in the store unseen, and are seen again if that is undone.
    public Edit<Sensor> remove(Sensor sensor) {
        var current = theSensor(sensor.id());
        if (current.version() != sensor.version()) {
            return new Edit.Stale<>(current);
        }
        tx.deleteWhere("log_file", "sensor", current.id().value());
        tx.delete("sensor", current.id().value());
        return new Edit.Saved<>(current);
    }

    public Optional<Sensor> find(SensorId id) {
        return tx.first(Sensors::read, "select * from sensor where id = ?", id.value());
    }

    /// @throws IllegalArgumentException if there is none
    public Sensor theSensor(SensorId id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no sensor " + id.value()));
    }

    /// By incubator and name.
    public List<Sensor> all() {
        return tx.list(Sensors::read, "select * from sensor order by incubator, name_key");
    }

    /// Those of an incubator, by name.
    public List<Sensor> of(IncubatorId incubator) {
        return tx.list(
                Sensors::read,
                "select * from sensor where incubator = ? order by name_key",
                incubator.value());
    }

    /// Those that send by themselves.
    public List<Sensor> live() {
        return all().stream().filter(sensor -> sensor.source().isLive()).toList();
    }

    private Findings problems(Sensor sensor, long self) {
        var source = sensor.source();
        return new Findings(tx.today())
                .notBlank(Field.SENSOR, sensor.name())
                .addIf(
                        tx.number(
                                        "select count(*) from sensor"
                                                + " where incubator = ? and name_key = ? and id <> ?",
                                        sensor.incubator().value(),
                                        Words.key(sensor.name()),
                                        self)
                                > 0,
                        new Problem.NameTaken(Field.SENSOR, sensor.name().strip()))
                .addIf(
                        source.isLive()
                                && tx.number(
                                                "select count(*) from sensor"
                                                        + " where topic = ? and member = ? and id <> ?",
                                                source.topic().strip(),
                                                source.member().strip(),
                                                self)
                                        > 0,
                        new Problem.NameTaken(Field.TOPIC, source.topic().strip()));
    }

    private static Values values(Sensor sensor) {
        return Values.of()
                .set("name", sensor.name().strip())
                .set("name_key", Words.key(sensor.name()))
                .set("incubator", sensor.incubator().value())
                .setIfAny("box", sensor.box().map(BoxId::value))
                .set("topic", sensor.source().topic().strip())
                .set("member", sensor.source().member().strip())
                .set("scale", sensor.scale())
                .set("correction_kelvin", sensor.correctionKelvin())
                .set("silent_after_minutes", sensor.silentAfter().toMinutes());
    }

    private static Sensor read(Row row) {
        return new Sensor(
                new SensorId(row.number("id")),
                row.number("version"),
                row.text("name"),
                new IncubatorId(row.number("incubator")),
                row.findNumber("box").map(BoxId::new),
                new Sensor.Source(row.text("topic"), row.text("member")),
                Sensor.Scale.valueOf(row.text("scale")),
                row.real("correction_kelvin"),
                Duration.ofMinutes(row.number("silent_after_minutes")));
    }
}
