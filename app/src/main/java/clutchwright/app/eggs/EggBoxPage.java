package clutchwright.app.eggs;

import clutchwright.app.eggs.EggBoxView.EggBoxFound;
import clutchwright.app.eggs.EggBoxView.Hour;
import clutchwright.app.holding.EggRules;
import clutchwright.app.holding.Holding;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.BoxWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.incubation.BoxCourse;
import clutchwright.engine.incubation.Breath;
import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.EggLimits;
import clutchwright.engine.incubation.EmbryoHeat.Shape;
import clutchwright.engine.incubation.ThermalMass;
import clutchwright.records.settings.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// How warm eggs make their box, before they do. Everything asked is in the address.
@Controller
public class EggBoxPage {

    /// Substrate, water and a tub, about; the cabinet around it is left out.
    private static final double BOX_JOULES_PER_KELVIN = 2500;

    private static final List<Integer> HOURS = List.of(1, 2, 4, 8, 12);
    private static final int LONGEST_HOURS = 48;
    private static final double BOX_LITRES = 20;
    private static final double LEAST_OXYGEN = 0.19;

    private final Holding holding;
    private final Preferring preferring;

    EggBoxPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/eggs/box")
    public Reply show(Form query) {
        var formats = new Formats(preferring.preferences());
        var rules = holding.database().read(tx -> EggRules.read(new Settings(tx)));
        var form = BoxAsked.filled(query, rules, formats);
        return switch (BoxAsked.read(form, formats)) {
            case Entry.Faulty<BoxAsked>(var faulty) ->
                    Reply.faulty(new EggBoxView(faulty, Optional.empty()));
            case Entry.Understood<BoxAsked>(var asked) -> {
                try {
                    yield Reply.show(new EggBoxView(form, Optional.of(found(asked, formats))));
                } catch (ArithmeticException e) {
                    yield Reply.faulty(
                            new EggBoxView(
                                    form.withFault(
                                            "ua",
                                            "So many eggs in so tight a box warm each other without end: a box that lets more heat out was expected."),
                                    Optional.empty()));
                }
            }
        };
    }

    private static EggBoxFound found(BoxAsked asked, Formats formats) {
        var logistic = BoxCourse.of(asked.box(Shape.LOGISTIC), asked.eggs(), asked.setPoint());
        var exponential =
                BoxCourse.of(asked.box(Shape.EXPONENTIAL), asked.eggs(), asked.setPoint());
        var late = BoxBand.of(asked, asked.eggs(), 1, asked.setPoint());
        var limit = EggLimits.of(late.warmer().egg());
        var words = new BoxWords(formats);
        return new EggBoxFound(
                words.late(late.cooler(), late.warmer()),
                BoxWords.judged(limit),
                limit == EggLimits.TOO_WARM || limit == EggLimits.CRITICAL,
                words.trouble(firstTooWarm(logistic), firstTooWarm(exponential)),
                onDay(asked, logistic, exponential, words),
                words.highest(highest(asked, Shape.EXPONENTIAL), highest(asked, Shape.LOGISTIC)),
                words.hatch(exponential.hatchDay(), logistic.hatchDay()),
                words.damp(late.warmer()),
                words.air(
                        Breath.sealedHours(
                                asked.eggs() * late.warmer().wattsPerEgg(),
                                BOX_LITRES,
                                LEAST_OXYGEN)),
                BoxCourseDrawing.draw(
                        logistic,
                        exponential,
                        words.late(late.cooler(), late.warmer())
                                + " "
                                + words.trouble(firstTooWarm(logistic), firstTooWarm(exponential)),
                        formats),
                BoxSplits.of(asked, words),
                cut(asked, late, formats),
                cutWords(asked, late, words));
    }

    private static Celsius highest(BoxAsked asked, Shape shape) {
        return asked.box(shape).highestSetPoint(asked.eggs(), 1, EggLimits.TOO_WARM_AT);
    }

    private static OptionalInt firstTooWarm(BoxCourse course) {
        return course.days().stream()
                .filter(day -> day.warmth().egg().compareTo(EggLimits.TOO_WARM_AT) >= 0)
                .mapToInt(BoxCourse.Day::day)
                .findFirst();
    }

    private static String onDay(
            BoxAsked asked, BoxCourse logistic, BoxCourse exponential, BoxWords words) {
        var last = Math.min(logistic.days().size(), exponential.days().size()) - 1;
        var day = Math.min(asked.day(), last);
        var band =
                new BoxBand(
                        logistic.days().get(day).warmth(), exponential.days().get(day).warmth());
        return words.onDay(day, band.cooler(), band.warmer());
    }

    /// Without the eggs' own heat, which is on the safe side.
    private static double eggAfter(BoxAsked asked, BoxBand late, double hours) {
        var mass = ThermalMass.of(asked.box(Shape.LOGISTIC), asked.eggs(), BOX_JOULES_PER_KELVIN);
        var room = asked.room().degrees();
        var start =
                new ThermalMass.Excess(
                        late.cooler().egg().degrees() - room, late.cooler().box().degrees() - room);
        return room + mass.after(hours * 3600, start, 0).eggKelvin();
    }

    private static List<Hour> cut(BoxAsked asked, BoxBand late, Formats formats) {
        var hours = new ArrayList<Hour>();
        for (var hour : HOURS) {
            hours.add(new Hour(hour, formats.warmth(eggAfter(asked, late, hour))));
        }
        return hours;
    }

    private static String cutWords(BoxAsked asked, BoxBand late, BoxWords words) {
        for (var minutes = 0; minutes <= 60 * LONGEST_HOURS; minutes += 5) {
            if (eggAfter(asked, late, minutes / 60.0) <= EggLimits.COOL_AT.degrees()) {
                return words.cut(minutes / 60.0);
            }
        }
        return words.noCut();
    }
}
