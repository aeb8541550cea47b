package clutchwright.app.eggs;

import clutchwright.app.holding.EggRules;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.Conductance;
import clutchwright.engine.incubation.EggBox;
import clutchwright.engine.incubation.EmbryoHeat;
import clutchwright.engine.incubation.EmbryoHeat.Shape;

/// What is asked about an egg box.
///
/// @param eggs live ones
/// @param most eggs that the keeper puts in a box
/// @param day since laying, for the figures of one day
/// @param room air of the room, if the power fails
record BoxAsked(
        int eggs,
        int most,
        Celsius setPoint,
        int day,
        Conductance conductance,
        double eggGrams,
        Celsius room) {

    private static final int MOST_EGGS = 60;
    private static final int LAST_DAY = 70;
    static final double USUAL_SET_CELSIUS = 31.1;
    private static final double USUAL_ROOM_CELSIUS = 22;

    /// A plastic tub with a lid, by its volume; or one whose conductance was measured.
    enum Tub {
        SMALL("12 litres", 0.36, 0.24, 0.14),
        MIDDLE("20 litres", 0.43, 0.30, 0.16),
        LARGE("30 litres", 0.48, 0.36, 0.18),
        OWN("Measured, in W/K", 0, 0, 0);

        private final String label;
        private final double length;
        private final double width;
        private final double height;

        Tub(String label, double length, double width, double height) {
            this.label = label;
            this.length = length;
            this.width = width;
            this.height = height;
        }

        String label() {
            return label;
        }
    }

    /// The form as it stands at first, with what the address asks put in.
    static Form filled(Form asked, EggRules rules, Formats formats) {
        var form =
                Form.EMPTY
                        .with("eggs", "8")
                        .with("most", Integer.toString(rules.mostInBox()))
                        .with("day", "55")
                        .with(
                                "tub",
                                rules.usualBox().isPresent() ? Tub.OWN.name() : Tub.MIDDLE.name())
                        .with("ua", formats.decimals(rules.box().wattsPerKelvin(), 2))
                        .with("grams", formats.decimals(formats.ofGrams(EmbryoHeat.EGG_GRAMS), 1))
                        .with("set", formats.decimals(formats.ofCelsius(USUAL_SET_CELSIUS), 1))
                        .with("room", formats.decimals(formats.ofCelsius(USUAL_ROOM_CELSIUS), 1));
        for (var field : asked.values().keySet()) {
            if (!asked.text(field).isEmpty()) {
                form = form.with(field, asked.text(field));
            }
        }
        return form;
    }

    static Entry<BoxAsked> read(Form form, Formats formats) {
        var fields = new Fields(form);
        var eggs = fields.whole("eggs", 1, MOST_EGGS);
        var most = fields.whole("most", 1, MOST_EGGS);
        var day = fields.whole("day", 0, LAST_DAY);
        var set =
                fields.number(
                        "set", rounded(formats.ofCelsius(20)), rounded(formats.ofCelsius(38)));
        var room =
                fields.number(
                        "room", rounded(formats.ofCelsius(0)), rounded(formats.ofCelsius(38)));
        var grams =
                fields.number("grams", rounded(formats.ofGrams(20)), rounded(formats.ofGrams(250)));
        var tub = fields.choice("tub", Tub.class);
        var own =
                form.text("tub").equals(Tub.OWN.name())
                        ? fields.number("ua", 0.3, 20)
                        : fields.understood(1.0);
        return fields.into(
                () ->
                        new BoxAsked(
                                eggs.value(),
                                most.value(),
                                new Celsius(formats.celsiusOf(set.value())),
                                day.value(),
                                tub.value() == Tub.OWN
                                        ? new Conductance(own.value())
                                        : Conductance.ofTub(
                                                tub.value().length,
                                                tub.value().width,
                                                tub.value().height),
                                formats.gramsOf(grams.value()),
                                new Celsius(formats.celsiusOf(room.value()))));
    }

    EggBox box(Shape shape) {
        return new EggBox(EmbryoHeat.standard(shape), conductance, EggBox.Pile.STANDARD, eggGrams);
    }

    private static double rounded(double bound) {
        return Math.round(bound);
    }
}
