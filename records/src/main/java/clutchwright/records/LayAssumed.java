package clutchwright.records;

import clutchwright.engine.season.LayPriors;
import clutchwright.engine.season.LayPriors.Gap;
import clutchwright.engine.season.LayPriors.Skips;
import clutchwright.records.settings.Settings;

/// What the keeper takes to be known of lay days.
public final class LayAssumed {

    private static final String MEAN = "lay/mean-day";
    private static final String MEAN_SD = "lay/mean-sd";
    private static final String FEMALE_SD = "lay/female-sd";
    private static final String SEASON_SD = "lay/season-sd";
    private static final String CLUTCH_SD = "lay/clutch-sd";
    private static final String FIRST_TIME = "lay/first-time";
    private static final String OVULATION_LAY = "lay/ovulation-lay";
    private static final String OVULATION_SHED = "lay/ovulation-shed";
    private static final String SHED_LAY = "lay/shed-lay";
    private static final String SKIPPED = "lay/skipped";
    private static final String LAID = "lay/laid";
    private static final String SD = "-sd";

    private LayAssumed() {}

    /// What is not set, or makes no sense, is as [LayPriors#STANDARD] has it.
    public static LayPriors read(Settings settings) {
        var first = LayPriors.STANDARD;
        try {
            return new LayPriors(
                    number(settings, MEAN, first.meanDay()),
                    number(settings, MEAN_SD, first.meanSdDays()),
                    number(settings, FEMALE_SD, first.femaleSdDays()),
                    number(settings, SEASON_SD, first.seasonSdDays()),
                    number(settings, CLUTCH_SD, first.clutchSdDays()),
                    number(settings, FIRST_TIME, first.firstTimeDays()),
                    new Skips(
                            number(settings, SKIPPED, first.skips().skipped()),
                            number(settings, LAID, first.skips().laid())),
                    gap(settings, OVULATION_LAY, first.ovulationToLay()),
                    gap(settings, OVULATION_SHED, first.ovulationToShed()),
                    gap(settings, SHED_LAY, first.shedToLay()));
        } catch (IllegalArgumentException e) {
            // Written by hand into the database: a forecast by the standard beats none.
            return first;
        }
    }

    public static void put(Settings settings, LayPriors priors) {
        put(settings, MEAN, priors.meanDay());
        put(settings, MEAN_SD, priors.meanSdDays());
        put(settings, FEMALE_SD, priors.femaleSdDays());
        put(settings, SEASON_SD, priors.seasonSdDays());
        put(settings, CLUTCH_SD, priors.clutchSdDays());
        put(settings, FIRST_TIME, priors.firstTimeDays());
        put(settings, SKIPPED, priors.skips().skipped());
        put(settings, LAID, priors.skips().laid());
        put(settings, OVULATION_LAY, priors.ovulationToLay());
        put(settings, OVULATION_SHED, priors.ovulationToShed());
        put(settings, SHED_LAY, priors.shedToLay());
    }

    private static void put(Settings settings, String name, Gap gap) {
        put(settings, name, gap.days());
        put(settings, name + SD, gap.sdDays());
    }

    private static void put(Settings settings, String name, double value) {
        settings.put(name, Double.toString(value));
    }

    private static Gap gap(Settings settings, String name, Gap first) {
        return new Gap(
                number(settings, name, first.days()), number(settings, name + SD, first.sdDays()));
    }

    private static double number(Settings settings, String name, double first) {
        return settings.find(name).map(Double::parseDouble).orElse(first);
    }
}
