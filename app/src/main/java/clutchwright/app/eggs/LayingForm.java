package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.engine.pedigree.Parentage;
import clutchwright.records.animals.Animals;
import clutchwright.records.checks.Field;
import clutchwright.records.clutches.ClutchNumber;
import clutchwright.records.clutches.Laying;
import clutchwright.records.pairings.Pairing;
import clutchwright.records.pairings.PairingId;
import clutchwright.records.pairings.Pairings;
import clutchwright.records.store.Transaction;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// The form of a new clutch.
final class LayingForm {

    static final int MOST = 60;

    private LayingForm() {}

    static Entry<Laying> read(Holding holding, Transaction tx, Form form) {
        var fields = new Fields(form);
        var typed = fields.text("dam", "Write the tag of the female that laid.");
        var dam = new Animals(tx).byTag(form.text("dam"));
        if (!form.text("dam").isEmpty() && dam.isEmpty()) {
            fields.faulty(
                    "dam",
                    "No animal has the tag “%s”. Look her up in Collection, or add her first."
                            .formatted(form.text("dam")));
        }
        var sires = SireChoice.read(fields, form, tx);
        var laid = fields.date("laid");
        var good = fields.whole("good", 0, MOST);
        var slugs = fields.whole("slugs", 0, MOST);
        var number = number(fields, form);
        return fields.into(
                () -> {
                    var mother = dam.orElseThrow(() -> new IllegalStateException(typed.value()));
                    var parentage = sires.value().parentage(mother.id());
                    var pairing =
                            pairing(tx, form)
                                    .filter(named -> fits(named, parentage))
                                    .or(() -> pairing(tx, parentage, laid.value()));
                    return new Laying(
                            number.value(),
                            pairing.map(Pairing::season).orElse(laid.value().getYear()),
                            parentage,
                            pairing.map(Pairing::id),
                            laid.value(),
                            mother.species(),
                            form.text("notes"),
                            good.value(),
                            slugs.value());
                });
    }

    /// Where in this form a problem of that field is shown.
    static String place(Field field) {
        return switch (field) {
            case DAM -> "dam";
            case SIRE -> SireChoice.OTHER;
            case LAID, SEASON -> "laid";
            case EGGS -> "good";
            case CLUTCH_NUMBER -> "number";
            case NOTE -> "notes";
            default -> "dam";
        };
    }

    private static Fields.Read<Optional<ClutchNumber>> number(Fields fields, Form form) {
        var typed = form.text("number");
        if (typed.isEmpty()) {
            return fields.understood(Optional.empty());
        }
        var found = ClutchNumber.find(typed);
        return found.isPresent()
                ? fields.understood(found)
                : fields.faulty(
                        "number", "Write the number as season-clutch, such as 26-07, or leave it.");
    }

    /// The pairing that led to this form, if one did.
    static Optional<Pairing> pairing(Transaction tx, Form form) {
        var named = form.text("pairing");
        return named.matches("\\d{1,18}")
                ? new Pairings(tx).find(new PairingId(Long.parseLong(named)))
                : Optional.empty();
    }

    private static boolean fits(Pairing pairing, Parentage parentage) {
        return parentage.dams().contains(pairing.dam())
                && parentage.sires().contains(pairing.sire());
    }

    /// The pairing that the eggs came of, where there is no doubt: of the year in which they were
    /// laid, or of the next, since a season begins in the autumn before it.
    private static Optional<Pairing> pairing(Transaction tx, Parentage parentage, LocalDate laid) {
        if (parentage.sires().size() != 1) {
            return Optional.empty();
        }
        List<Pairing> pairings = new Pairings(tx).of(parentage.dams().getFirst());
        return pairings.stream()
                .filter(pairing -> fits(pairing, parentage))
                .filter(pairing -> pairing.season() >= laid.getYear())
                .filter(pairing -> pairing.season() <= laid.getYear() + 1)
                .min(Comparator.comparingInt(Pairing::season));
    }
}
