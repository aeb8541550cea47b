package clutchwright.app.season;

import clutchwright.app.wording.PairingWords;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Field;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.husbandry.Husbandry;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.pairings.SignSeen;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// What a keeper writes down of a pairing with one tap.
enum Happening {
    TOGETHER("Put together"),
    LOCK("Lock seen"),
    BUILDING("Building"),
    OVULATION("Ovulation"),
    PRE_LAY_SHED("Pre-lay shed"),
    SEPARATED("Separated"),
    REFUSED("She refused a meal");

    private final String button;

    Happening(String button) {
        this.button = button;
    }

    String button() {
        return button;
    }

    /// What can happen next to a pairing, the likeliest first.
    static List<Happening> next(Pairing pairing, Stage stage) {
        var next = new ArrayList<Happening>();
        if (stage == Stage.LAID) {
            return next;
        }
        var signs =
                switch (stage) {
                    case PLANNED -> List.of(LOCK);
                    case TOGETHER, LOCKED, BUILDING ->
                            List.of(LOCK, BUILDING, OVULATION, PRE_LAY_SHED);
                    case SEPARATED -> List.of(BUILDING, OVULATION, PRE_LAY_SHED);
                    case OVULATION -> List.of(PRE_LAY_SHED);
                    case PRE_LAY_SHED, LAID -> List.<Happening>of();
                };
        switch (pairing.state()) {
            case PLANNED -> {
                next.add(TOGETHER);
                next.addAll(signs);
            }
            case ACTIVE -> {
                next.addAll(signs);
                next.add(SEPARATED);
            }
            case DONE -> {
                next.addAll(signs);
                if (stage == Stage.SEPARATED) {
                    next.add(TOGETHER);
                }
            }
        }
        if (stage != Stage.PLANNED) {
            next.add(REFUSED);
        }
        return next;
    }

    /// What is said of it afterwards.
    String done(String day) {
        return switch (this) {
            case TOGETHER -> "together from %s".formatted(day);
            case REFUSED -> "she refused a meal on %s".formatted(day);
            case LOCK, BUILDING, OVULATION, PRE_LAY_SHED ->
                    "%s seen %s"
                            .formatted(
                                    PairingWords.sign(SignSeen.Kind.valueOf(name()))
                                            .toLowerCase(Locale.ROOT),
                                    day);
            case SEPARATED -> "separated %s".formatted(day);
        };
    }

    /// Writes it down. A sign of a pairing that was only planned says that they were together.
    Edit<?> write(Transaction tx, Pairing pairing, LocalDate on) {
        var pairings = new Pairings(tx);
        return switch (this) {
            case TOGETHER -> pairings.update(together(pairing, on), Questions.ALL_THE_SAME);
            case SEPARATED -> pairings.update(pairing.done(on), Questions.ALL_THE_SAME);
            case LOCK -> {
                if (pairing.state() == Pairing.State.PLANNED) {
                    var begun = pairings.update(pairing.begun(on), Questions.ALL_THE_SAME);
                    if (begun.saved().isEmpty()) {
                        yield begun;
                    }
                }
                yield sign(pairings, pairing, SignSeen.Kind.LOCK, on);
            }
            case BUILDING -> sign(pairings, pairing, SignSeen.Kind.BUILDING, on);
            case REFUSED -> new Husbandry(tx).feed(pairing.dam(), on, "", false, "");
            case OVULATION -> sign(pairings, pairing, SignSeen.Kind.OVULATION, on);
            case PRE_LAY_SHED -> sign(pairings, pairing, SignSeen.Kind.PRE_LAY_SHED, on);
        };
    }

    private static Edit<SignSeen> sign(
            Pairings pairings, Pairing pairing, SignSeen.Kind kind, LocalDate on) {
        var first = pairing.putTogether();
        if (first.isPresent() && on.isBefore(first.get())) {
            return Edit.refused(
                    new Problem.WrongOrder(
                            Field.PUT_TOGETHER, first.get(), Field.SIGN_SEEN_ON, on));
        }
        var before =
                pairings.signs(pairing.id()).stream()
                        .filter(sign -> sign.kind() == kind && sign.on().equals(on))
                        .findFirst();
        // A second tap on the same button says nothing new.
        return before.<Edit<SignSeen>>map(Edit.Saved::new)
                .orElseGet(() -> pairings.see(pairing.id(), kind, on, ""));
    }

    /// Once more together after they were separated: the first day stays.
    private static Pairing together(Pairing pairing, LocalDate on) {
        if (pairing.putTogether().isEmpty()) {
            return pairing.begun(on);
        }
        return new Pairing(
                pairing.id(),
                pairing.version(),
                pairing.season(),
                pairing.dam(),
                pairing.sire(),
                Pairing.State.ACTIVE,
                pairing.putTogether(),
                Optional.empty(),
                pairing.notes());
    }
}
