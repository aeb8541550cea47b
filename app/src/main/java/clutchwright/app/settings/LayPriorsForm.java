package clutchwright.app.settings;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.engine.season.LayPriors;
import clutchwright.engine.season.LayPriors.Gap;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;

/// The form of what is taken to be known of lay days.
final class LayPriorsForm {

    private static final double LEAST = 0.1;
    private static final double MOST_SPREAD = 120;
    private static final double MOST_GAP = 200;

    private LayPriorsForm() {}

    static Form of(LayPriors priors) {
        var values = new LinkedHashMap<String, String>();
        values.put("mean-day", text(priors.meanDay()));
        values.put("mean-sd", text(priors.meanSdDays()));
        values.put("female-sd", text(priors.femaleSdDays()));
        values.put("season-sd", text(priors.seasonSdDays()));
        values.put("clutch-sd", text(priors.clutchSdDays()));
        values.put("first-time", text(priors.firstTimeDays()));
        values.put("ovulation-lay", text(priors.ovulationToLay().days()));
        values.put("ovulation-lay-sd", text(priors.ovulationToLay().sdDays()));
        values.put("ovulation-shed", text(priors.ovulationToShed().days()));
        values.put("ovulation-shed-sd", text(priors.ovulationToShed().sdDays()));
        values.put("shed-lay", text(priors.shedToLay().days()));
        values.put("shed-lay-sd", text(priors.shedToLay().sdDays()));
        return Form.of(values);
    }

    /// @param now what is taken now, for what the form does not ask
    static Entry<LayPriors> read(Form form, LayPriors now) {
        var fields = new Fields(form);
        var mean = fields.number("mean-day", 1, 366);
        var meanSd = fields.number("mean-sd", LEAST, MOST_SPREAD);
        var female = fields.number("female-sd", LEAST, MOST_SPREAD);
        var season = fields.number("season-sd", LEAST, MOST_SPREAD);
        var clutch = fields.number("clutch-sd", LEAST, MOST_SPREAD);
        var first = fields.number("first-time", -MOST_SPREAD, MOST_SPREAD);
        var ovulationLay = fields.number("ovulation-lay", LEAST, MOST_GAP);
        var ovulationLaySd = fields.number("ovulation-lay-sd", LEAST, MOST_SPREAD);
        var ovulationShed = fields.number("ovulation-shed", LEAST, MOST_GAP);
        var ovulationShedSd = fields.number("ovulation-shed-sd", LEAST, MOST_SPREAD);
        var shedLay = fields.number("shed-lay", LEAST, MOST_GAP);
        var shedLaySd = fields.number("shed-lay-sd", LEAST, MOST_SPREAD);
        var fits =
                fields.into(
                        () ->
                                LayPriors.canMakeUp(
                                        new Gap(ovulationLay.value(), ovulationLaySd.value()),
                                        new Gap(ovulationShed.value(), ovulationShedSd.value()),
                                        new Gap(shedLay.value(), shedLaySd.value())));
        if (fits instanceof Entry.Understood<Boolean>(var can) && !can) {
            fields.faulty(
                    "ovulation-lay-sd",
                    "The two gaps that make it up cannot spread so: it lies between their difference and their sum.");
        }
        return fields.into(
                () ->
                        new LayPriors(
                                mean.value(),
                                meanSd.value(),
                                female.value(),
                                season.value(),
                                clutch.value(),
                                first.value(),
                                now.skips(),
                                new Gap(ovulationLay.value(), ovulationLaySd.value()),
                                new Gap(ovulationShed.value(), ovulationShedSd.value()),
                                new Gap(shedLay.value(), shedLaySd.value())));
    }

    private static String text(double days) {
        return BigDecimal.valueOf(days)
                .round(MathContext.DECIMAL32)
                .stripTrailingZeros()
                .toPlainString();
    }
}
