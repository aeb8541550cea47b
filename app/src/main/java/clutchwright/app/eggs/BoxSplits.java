package clutchwright.app.eggs;

import clutchwright.app.eggs.EggBoxView.Split;
import clutchwright.app.holding.EggRules;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.wording.BoxWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.incubation.ClutchSplit;
import clutchwright.engine.incubation.EggLimits;
import clutchwright.records.incubators.Incubator;
import clutchwright.records.incubators.Incubators;
import clutchwright.records.settings.Settings;
import clutchwright.records.store.Transaction;
import java.util.List;
import java.util.stream.IntStream;

/// How warm late eggs come to be in one box or several.
final class BoxSplits {

    private static final int MOST_BOXES = 3;

    private BoxSplits() {}

    /// In the house's usual box and at its set point; nothing for so many eggs that the model has
    /// no end.
    static List<Split> usual(long eggs, Usual usual, Formats formats) {
        var form =
                BoxAsked.filled(
                        Form.EMPTY
                                .with("eggs", String.valueOf(eggs))
                                .with(
                                        "set",
                                        formats.decimals(formats.ofCelsius(usual.setCelsius()), 1)),
                        usual.rules(),
                        formats);
        if (!(BoxAsked.read(form, formats) instanceof Entry.Understood<BoxAsked>(var asked))) {
            return List.of();
        }
        try {
            return of(asked, new BoxWords(formats));
        } catch (ArithmeticException noEnd) {
            return List.of();
        }
    }

    /// What the house does with eggs.
    ///
    /// @param setCelsius of its incubator, or what is usual where it has none or several
    record Usual(EggRules rules, double setCelsius) {

        static Usual read(Transaction tx) {
            var set =
                    new Incubators(tx)
                            .all().stream().map(Incubator::setPointCelsius).distinct().toList();
            return new Usual(
                    EggRules.read(new Settings(tx)),
                    set.size() == 1 ? set.getFirst() : BoxAsked.USUAL_SET_CELSIUS);
        }
    }

    static List<Split> of(BoxAsked asked, BoxWords words) {
        var rule = ClutchSplit.atMost(asked.eggs(), asked.most()).boxes().size();
        var most = Math.max(rule, Math.min(MOST_BOXES, asked.eggs()));
        return IntStream.rangeClosed(1, most)
                .mapToObj(
                        boxes -> {
                            var split = ClutchSplit.into(asked.eggs(), boxes);
                            var band = BoxBand.of(asked, split.fullest(), 1, asked.setPoint());
                            return new Split(
                                    words.boxes(split),
                                    words.between(band.cooler().egg(), band.warmer().egg()),
                                    BoxWords.judged(EggLimits.of(band.warmer().egg())),
                                    boxes == rule);
                        })
                .toList();
    }
}
