package clutchwright.app.season;

import clutchwright.engine.season.CollectionMean;
import clutchwright.engine.season.DayOfYear;
import clutchwright.engine.season.LayModel;
import clutchwright.engine.season.LayModel.Female;
import clutchwright.engine.season.LayModel.Other;
import clutchwright.engine.season.LayPriors;
import clutchwright.engine.season.SeasonYear;
import clutchwright.engine.season.Sign;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/// What a file says of a female, for a forecast; or everything that is wrong with it.
sealed interface LayFile {

    /// @param season in whose days everything is counted
    /// @param today its day, by which she has not laid
    record Understood(
            SeasonYear season,
            CollectionMean collection,
            Female female,
            List<Other> others,
            OptionalDouble today)
            implements LayFile {

        public Understood {
            others = List.copyOf(others);
        }
    }

    /// @param faults as sentences that name the place and what was expected
    record Refused(List<String> faults) implements LayFile {

        public Refused {
            faults = List.copyOf(faults);
        }
    }

    /// How long after a collection's mean day its season is taken to be over.
    int SEASON_PAST_DAYS = 120;

    static LayFile read(String text) {
        var fields = JsonFields.of(text);
        var root = fields.root();
        fields.only(root, "", "today", "collectionMeanDay", "female", "othersThisSeason");
        var today = fields.day(root, "/today", true);
        var mean = fields.number(root, "/collectionMeanDay", 0, 367);
        fields.object(root, "/female");
        fields.only(root, "/female", "laid", "firstTime", "ovulationBetween", "shed");
        var laid = fields.days(root, "/female/laid");
        var firstTime = fields.yesNo(root, "/female/firstTime");
        var ovulation = fields.days(root, "/female/ovulationBetween");
        var shed = fields.day(root, "/female/shed", false);
        if (fields.has(root, "/female/ovulationBetween")
                && fields.isSound()
                && (ovulation.size() != 2 || ovulation.get(0).isAfter(ovulation.get(1)))) {
            fields.fault(
                    "/female/ovulationBetween",
                    "two days, the last look without it and the look that found it");
        }
        if (firstTime && !laid.isEmpty()) {
            fields.fault("/female/firstTime", "false, since clutches of hers are listed");
        }
        if (fields.isSound()
                && shed.isPresent()
                && ovulation.size() == 2
                && shed.get().isBefore(ovulation.get(0))) {
            fields.fault("/female/shed", "a day after her ovulation");
        }
        var others =
                fields.list(root, "/othersThisSeason").stream()
                        .flatMap(at -> other(fields, at).stream())
                        .toList();
        if (!fields.isSound() || today.isEmpty()) {
            return new Refused(fields.faults());
        }
        return understood(today.get(), mean, laid, firstTime, ovulation, shed, others);
    }

    private static Optional<Other> other(JsonFields fields, String at) {
        var root = fields.root();
        if (!fields.object(root, at)) {
            return Optional.empty();
        }
        fields.only(root, at, "shift", "variance");
        var shift = fields.required(root, at + "/shift", -366, 366);
        var variance = fields.required(root, at + "/variance", Double.MIN_VALUE, 1e6);
        return fields.isSound() ? Optional.of(new Other(shift, variance)) : Optional.empty();
    }

    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static Understood understood(
            LocalDate today,
            OptionalDouble mean,
            List<LocalDate> laid,
            boolean firstTime,
            List<LocalDate> ovulation,
            Optional<LocalDate> shed,
            List<Other> others) {
        var anchor = mean.orElse(LayPriors.STANDARD.meanDay());
        var year = season(today, anchor, ovulation, shed);
        return new Understood(
                year,
                mean.isPresent()
                        ? CollectionMean.given(anchor)
                        : new LayModel(LayPriors.STANDARD).assumedMean(),
                new Female(
                        laid.stream()
                                .map(day -> DayOfYear.near(day.getDayOfYear(), anchor))
                                .toList(),
                        0,
                        firstTime,
                        OptionalDouble.empty(),
                        ovulation.isEmpty()
                                ? Optional.empty()
                                : Optional.of(
                                        new Sign.Ovulation(
                                                year.number(ovulation.get(0)),
                                                year.number(ovulation.get(1)))),
                        shed.map(day -> new Sign.PreLayShed(year.number(day)))),
                others,
                OptionalDouble.of(year.number(today)));
    }

    /// The season that a sign belongs to, else the one that is not over today.
    @SuppressWarnings("OptionalUsedAsFieldOrParameterType")
    private static SeasonYear season(
            LocalDate today, double anchor, List<LocalDate> ovulation, Optional<LocalDate> shed) {
        var sign =
                shed.or(
                        () ->
                                ovulation.isEmpty()
                                        ? Optional.empty()
                                        : Optional.of(ovulation.get(1)));
        if (sign.isPresent()) {
            return SeasonYear.about(sign.get(), anchor);
        }
        var year = SeasonYear.about(today, anchor);
        return year.number(today) > anchor + SEASON_PAST_DAYS
                ? new SeasonYear(year.year() + 1)
                : year;
    }
}
