package clutchwright.app.season;

import clutchwright.app.parts.CalendarStrip;
import clutchwright.app.parts.CalendarStrip.Days;
import clutchwright.app.parts.Markup;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.LayWords;
import clutchwright.records.LayOutlook.Expected;
import java.time.LocalDate;
import java.util.List;

/// When a female is expected to lay, as it is shown beside her pairing.
///
/// @param words in one sentence
/// @param skips that she may not lay this season; blank where that is not likely
/// @param late that she is overdue, and what to do; blank where she is not
/// @param why what it rests on, as sentences
public record ExpectedLaying(
        String words, String skips, String late, Markup strip, List<String> why) {

    public ExpectedLaying {
        why = List.copyOf(why);
    }

    static ExpectedLaying of(Expected expected, LocalDate today, Formats formats) {
        var half = new Days(expected.by(0.25), expected.by(0.75));
        var most = new Days(expected.by(0.05), expected.by(0.95));
        var words = LayWords.expected(expected, formats);
        return new ExpectedLaying(
                words,
                LayWords.skips(expected.forecast(), formats),
                LayWords.late(expected, today, formats),
                CalendarStrip.draw(
                        day -> expected.forecast().laid().by(expected.year().number(day) + 0.5),
                        half,
                        most,
                        today,
                        words),
                expected.forecast().basis().stream()
                        .map(basis -> LayWords.sentence(basis, expected.year(), formats::dayOfYear))
                        .toList());
    }
}
