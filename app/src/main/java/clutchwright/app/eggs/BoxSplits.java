package clutchwright.app.eggs;

import clutchwright.app.eggs.EggBoxView.Split;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.wording.BoxWords;
import clutchwright.app.wording.Formats;
import clutchwright.engine.incubation.ClutchSplit;
import clutchwright.engine.incubation.EggLimits;
import java.util.List;
import java.util.stream.IntStream;

/// How warm late eggs come to be in one box or several.
final class BoxSplits {

    private static final int MOST_BOXES = 3;

    private BoxSplits() {}

    /// In the tub and at the set point that the egg box page begins with; nothing for so many eggs
    /// that the model has no end.
    static List<Split> usual(long eggs, Formats formats) {
        var form = BoxAsked.filled(Form.EMPTY.with("eggs", String.valueOf(eggs)), formats);
        if (!(BoxAsked.read(form, formats) instanceof Entry.Understood<BoxAsked>(var asked))) {
            return List.of();
        }
        try {
            return of(asked, new BoxWords(formats));
        } catch (ArithmeticException noEnd) {
            return List.of();
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
