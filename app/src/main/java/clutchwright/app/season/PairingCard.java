package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Choice;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.PairingWords;
import clutchwright.records.LayOutlook;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.SignSeen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// One pairing in the list of a season.
///
/// @param stage how far it has come, in words
/// @param since when that was, with how long ago; empty where nothing has happened
/// @param course what was seen before, in the order of the days
/// @param expected when she is expected to lay
/// @param ready what speaks against pairing them now
/// @param happenings buttons for what can be written down next
/// @param clutches what came of it
/// @param predict the address of its prediction
/// @param lay the address where its clutch is recorded; empty where there is none to expect
/// @param on the day in the form, as typed
/// @param fault what was wrong with what was last written; empty where nothing was
public record PairingCard(
        long id,
        Mate dam,
        Mate sire,
        String stage,
        String since,
        List<String> course,
        Optional<ExpectedLaying> expected,
        List<String> ready,
        List<Choice> happenings,
        List<Laid> clutches,
        String predict,
        String lay,
        String notes,
        String on,
        String fault) {

    private static final int FEW = 3;

    public PairingCard {
        course = List.copyOf(course);
        ready = List.copyOf(ready);
        happenings = List.copyOf(happenings);
        clutches = List.copyOf(clutches);
    }

    /// A clutch that came of the pairing.
    public record Laid(String path, String words) {}

    /// What was last typed for one pairing of the list, and what was wrong with it.
    record Slip(long pairing, String on, String fault) {

        static final Slip NONE = new Slip(0, "", "");
    }

    static PairingCard of(
            Holding holding,
            Pairing pairing,
            List<SignSeen> signs,
            List<Clutch> clutches,
            Optional<LayOutlook.Expected> expected,
            List<String> ready,
            Slip slip,
            Formats formats) {
        var stage = Stage.of(pairing, signs, !clutches.isEmpty());
        var today = holding.today();
        var slipped = slip.pairing() == pairing.id().value();
        return new PairingCard(
                pairing.id().value(),
                Mate.of(holding, pairing.dam()),
                Mate.of(holding, pairing.sire()),
                stage.words(),
                since(stage, pairing, signs, clutches, today, formats),
                course(pairing, signs, formats),
                stage == Stage.LAID
                        ? Optional.empty()
                        : expected.map(each -> ExpectedLaying.of(each, today, formats)),
                ready,
                Happening.next(pairing, stage).stream()
                        .map(what -> Choice.of(what, what.button()))
                        .toList(),
                clutches.stream()
                        .map(
                                clutch ->
                                        new Laid(
                                                "/eggs/" + clutch.id().value(),
                                                "Clutch %s, laid %s"
                                                        .formatted(
                                                                clutch.number(),
                                                                formats.date(clutch.laid()))))
                        .toList(),
                Address.PREDICT + "?dam=" + pairing.dam() + "&sire=" + pairing.sire(),
                stage == Stage.PLANNED || stage == Stage.LAID
                        ? ""
                        : "/eggs/new?pairing=" + pairing.id().value(),
                pairing.notes(),
                slipped ? slip.on() : today.toString(),
                slipped ? slip.fault() : "");
    }

    private static String since(
            Stage stage,
            Pairing pairing,
            List<SignSeen> signs,
            List<Clutch> clutches,
            LocalDate today,
            Formats formats) {
        var day =
                switch (stage) {
                    case LAID -> clutches.stream().map(Clutch::laid).findFirst();
                    case PRE_LAY_SHED -> last(signs, SignSeen.Kind.PRE_LAY_SHED);
                    case OVULATION -> last(signs, SignSeen.Kind.OVULATION);
                    case BUILDING -> last(signs, SignSeen.Kind.BUILDING);
                    case LOCKED -> last(signs, SignSeen.Kind.LOCK);
                    case TOGETHER -> pairing.putTogether();
                    case SEPARATED -> pairing.separated();
                    case PLANNED -> Optional.<LocalDate>empty();
                };
        return day.map(on -> formats.date(on) + ", " + formats.away(on, today)).orElse("");
    }

    private static Optional<LocalDate> last(List<SignSeen> signs, SignSeen.Kind kind) {
        return signs.stream()
                .filter(sign -> sign.kind() == kind)
                .map(SignSeen::on)
                .max(Comparator.naturalOrder());
    }

    private static List<String> course(Pairing pairing, List<SignSeen> signs, Formats formats) {
        var course = new ArrayList<String>();
        pairing.putTogether().ifPresent(day -> course.add("Together from " + formats.date(day)));
        for (var kind : SignSeen.Kind.values()) {
            var days =
                    signs.stream()
                            .filter(sign -> sign.kind() == kind)
                            .map(sign -> formats.dayOfYear(sign.on()))
                            .toList();
            if (days.size() > FEW) {
                course.add(
                        "%d %ss, the last %s"
                                .formatted(
                                        days.size(),
                                        PairingWords.sign(kind).toLowerCase(Locale.ROOT),
                                        days.getLast()));
            } else if (!days.isEmpty()) {
                course.add(
                        PairingWords.sign(kind)
                                + (days.size() > 1 ? "s " : " ")
                                + formats.list(days));
            }
        }
        pairing.separated().ifPresent(day -> course.add("Separated " + formats.date(day)));
        return course;
    }
}
