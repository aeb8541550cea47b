package clutchwright.app.incubators;

import clutchwright.app.web.Choice;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.clutches.BoxId;
import clutchwright.records.incubators.Incubator;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.incubators.Sensor;
import clutchwright.records.incubators.SensorId;
import clutchwright.records.store.Transaction;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// What is asked of a sensor.
final class SensorForm {

    static final String AIR = "AIR";

    private static final int USUAL_SILENCE = 60;
    private static final int LONGEST_SILENCE = 10_080;
    private static final double MOST_KELVIN = 5;

    private SensorForm() {}

    static Form empty() {
        var values = new LinkedHashMap<String, String>();
        values.put("place", AIR);
        values.put("scale", Sensor.Scale.CELSIUS.name());
        values.put("correction", "0");
        values.put("silent", Integer.toString(USUAL_SILENCE));
        return Form.of(values);
    }

    static Form of(Sensor sensor) {
        var values = new LinkedHashMap<String, String>();
        values.put("sensor", sensor.name());
        values.put("place", sensor.box().map(box -> Long.toString(box.value())).orElse(AIR));
        values.put("topic", sensor.source().topic());
        values.put("member", sensor.source().member());
        values.put("scale", sensor.scale().name());
        values.put("correction", Double.toString(sensor.correctionKelvin()));
        values.put("silent", Long.toString(sensor.silentAfter().toMinutes()));
        values.put("version", Long.toString(sensor.version()));
        return Form.of(values);
    }

    static List<Choice> places(Transaction tx, Incubator incubator) {
        var found = new ArrayList<Choice>();
        found.add(new Choice(AIR, "In the incubator's air"));
        new Incubators(tx)
                .boxes(incubator)
                .forEach(
                        box ->
                                found.add(
                                        new Choice(
                                                Long.toString(box.id().value()),
                                                "Among the eggs of box " + box.label())));
        return found;
    }

    static List<Choice> scales() {
        return List.of(
                new Choice(Sensor.Scale.CELSIUS.name(), "°C"),
                new Choice(Sensor.Scale.FAHRENHEIT.name(), "°F"));
    }

    /// @param old what is changed, for its id; a new one's is 0
    static Entry<Sensor> read(Form form, Incubator incubator, SensorId old, List<Choice> places) {
        var fields = new Fields(form);
        var name = fields.text("sensor", "Write what the sensor is called.");
        var place = form.text("place").isEmpty() ? AIR : form.text("place");
        if (places.stream().noneMatch(choice -> choice.value().equals(place))) {
            fields.faulty("place", "That box does not stand in this incubator.");
        }
        var topic = form.text("topic");
        if (topic.contains("#") || topic.contains("+") || topic.length() > 200) {
            fields.faulty("topic", "Write one topic, without # or +, of at most 200 letters.");
        }
        var scale = fields.choice("scale", Sensor.Scale.class);
        var correction = fields.number("correction", -MOST_KELVIN, MOST_KELVIN);
        var silent = fields.whole("silent", 1, LONGEST_SILENCE);
        return fields.into(
                () ->
                        new Sensor(
                                old,
                                version(form),
                                name.value(),
                                incubator.id(),
                                place.equals(AIR)
                                        ? Optional.empty()
                                        : Optional.of(new BoxId(Long.parseLong(place))),
                                new Sensor.Source(topic, form.text("member")),
                                scale.value(),
                                correction.value(),
                                Duration.ofMinutes(silent.value())));
    }

    static long version(Form form) {
        var text = form.text("version");
        return text.matches("[0-9]{1,18}") ? Long.parseLong(text) : 1;
    }

    /// The field beside which a problem stands.
    static String place(Field field) {
        return field == Field.TOPIC ? "topic" : "sensor";
    }

    static Form refused(Form form, List<Problem> problems, Formats formats) {
        var words = new ProblemWords(_ -> "", formats);
        var faulty = form;
        for (var problem : problems) {
            faulty = faulty.withFault(place(ProblemWords.fieldOf(problem)), words.of(problem));
        }
        return faulty;
    }
}
