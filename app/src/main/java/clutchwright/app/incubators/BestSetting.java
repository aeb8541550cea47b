package clutchwright.app.incubators;

import clutchwright.app.holding.EggRules;
import clutchwright.app.loggers.FeltSoFar;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.SettingWords;
import clutchwright.engine.incubation.Celsius;
import clutchwright.engine.incubation.Conductance;
import clutchwright.engine.incubation.DevelopmentRate;
import clutchwright.engine.incubation.EggBox;
import clutchwright.engine.incubation.EggLimits;
import clutchwright.engine.incubation.EmbryoHeat;
import clutchwright.engine.incubation.SetPointChoice;
import clutchwright.engine.incubation.SharedBox;
import clutchwright.engine.incubation.SharedCourse;
import clutchwright.records.clutches.Box;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.incubators.Incubator;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// The warmest that an incubator may be set with the boxes that stand in it now, and what comes of
/// what it is set to.
///
/// @param words what to do, in one or two sentences
/// @param decides which box it hangs on, and when
/// @param grave whether eggs get too warm as it is set
public record BestSetting(
        String words, String decides, boolean grave, List<Line> boxes, String basis) {

    /// By the steeper of the two curves, which is the warmer at the end.
    private static final EmbryoHeat HEAT = EmbryoHeat.standard(EmbryoHeat.Shape.EXPONENTIAL);

    /// Past that an egg may pip any hour.
    private static final double ALL_BUT_DONE = 0.995;

    public BestSetting {
        boxes = List.copyOf(boxes);
    }

    /// @param asSet the warmest that its eggs get, and when, as the incubator is set
    /// @param best the same at the best set point
    public record Line(String box, String eggs, String asSet, String best, boolean grave) {}

    /// Empty where no egg stands in it, or where the model finds no set point at all.
    static Optional<BestSetting> of(
            Transaction tx, Incubator incubator, LocalDate today, ZoneId zone, Formats formats) {
        var standing = standing(tx, incubator, today, zone);
        if (standing.isEmpty()) {
            return Optional.empty();
        }
        var rules = EggRules.read(new Settings(tx));
        var boxes = standing.stream().map(each -> each.shared(rules.box())).toList();
        try {
            var best = SetPointChoice.of(boxes, EggLimits.WARM_AT);
            var asSet = SetPointChoice.at(boxes, new Celsius(incubator.setPointCelsius()));
            return Optional.of(of(standing, best, asSet, today, rules, formats));
        } catch (ArithmeticException e) {
            return Optional.empty();
        }
    }

    private static BestSetting of(
            List<Standing> standing,
            SetPointChoice best,
            SetPointChoice asSet,
            LocalDate today,
            EggRules rules,
            Formats formats) {
        var words = new SettingWords(formats);
        var lines = new ArrayList<Line>();
        for (var i = 0; i < standing.size(); i++) {
            var now = asSet.courses().get(i);
            lines.add(
                    new Line(
                            standing.get(i).box().label(),
                            standing.get(i).inWords(formats),
                            words.warmest(now, today),
                            words.warmest(best.courses().get(i), today),
                            now.warmest().compareTo(EggLimits.WARM_AT) > 0));
        }
        var decides = standing.get(best.decides());
        return new BestSetting(
                words.advice(best, asSet, hatching(asSet), hatching(best)),
                words.decides(decides.box().label(), best.courses().get(best.decides()), today),
                asSet.warmest().compareTo(EggLimits.WARM_AT) > 0,
                lines,
                words.basis(rules.box()));
    }

    private static double hatching(SetPointChoice choice) {
        return choice.courses().stream()
                .map(SharedCourse::hatchDays)
                .flatMap(List::stream)
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
    }

    private static List<Standing> standing(
            Transaction tx, Incubator incubator, LocalDate today, ZoneId zone) {
        var boxes = new Incubators(tx).boxes(incubator);
        var clutches = new Clutches(tx).incubating();
        var felt = FeltSoFar.of(tx, clutches, boxes, zone);
        var standing = new ArrayList<Standing>();
        for (var box : boxes) {
            var inIt = new ArrayList<InBox>();
            for (var clutch : clutches) {
                var eggs =
                        (int)
                                clutch.incubating().stream()
                                        .filter(egg -> egg.box().equals(Optional.of(box.id())))
                                        .count();
                if (eggs > 0) {
                    inIt.add(
                            new InBox(
                                    clutch,
                                    eggs,
                                    grown(
                                            clutch,
                                            today,
                                            Optional.ofNullable(felt.get(clutch.id())))));
                }
            }
            if (!inIt.isEmpty()) {
                standing.add(new Standing(box, inIt));
            }
        }
        return standing;
    }

    /// By what its eggs felt, and since then and where nothing says so as at 31.7 °C.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static double grown(Clutch clutch, LocalDate today, Optional<FeltSoFar> felt) {
        var rate = DevelopmentRate.standard().perDay(DevelopmentRate.REFERENCE);
        var age = (double) ChronoUnit.DAYS.between(clutch.laid(), today);
        var reached =
                felt.map(FeltSoFar::development)
                        .map(said -> said.reached() + rate * Math.max(0, age - said.lastDay()))
                        .orElse(rate * age);
        return Math.clamp(reached, 0, ALL_BUT_DONE);
    }

    /// Eggs of one clutch in a box.
    private record InBox(Clutch clutch, int eggs, double grown) {}

    private record Standing(Box box, List<InBox> clutches) {

        SharedBox shared(Conductance conductance) {
            return new SharedBox(
                    HEAT,
                    conductance,
                    EggBox.Pile.STANDARD,
                    clutches.stream()
                            .map(
                                    lot ->
                                            new SharedBox.Lot(
                                                    lot.eggs(), lot.grown(), EmbryoHeat.EGG_GRAMS))
                            .toList());
        }

        String inWords(Formats formats) {
            return formats.list(
                    clutches.stream()
                            .map(
                                    lot ->
                                            "%d of %s, %d %% grown"
                                                    .formatted(
                                                            lot.eggs(),
                                                            lot.clutch().number(),
                                                            Math.round(100 * lot.grown())))
                            .toList());
        }
    }
}
