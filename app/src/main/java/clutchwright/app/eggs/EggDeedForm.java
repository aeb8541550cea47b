package clutchwright.app.eggs;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.records.checks.Field;
import clutchwright.records.clutches.Candling;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Egg;
import clutchwright.records.clutches.EggId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/// The form in which eggs are ticked and something is done with them.
///
/// @param eggs at least one
record EggDeedForm(EggDeed deed, List<EggDeed.Seen> eggs) {

    EggDeedForm {
        eggs = List.copyOf(eggs);
    }

    static Entry<EggDeedForm> read(Clutch clutch, Form form) {
        var fields = new Fields(form);
        var deed = deed(fields, form);
        var eggs = eggs(fields, clutch, form);
        return fields.into(() -> new EggDeedForm(deed.value(), eggs.value()));
    }

    /// Where in this form a problem of that field is shown.
    static String place(Field field) {
        return switch (field) {
            case CANDLED, LOST, LAID -> "on";
            case BOX -> "box";
            default -> "eggs";
        };
    }

    private static Fields.Read<EggDeed> deed(Fields fields, Form form) {
        return switch (form.text("do")) {
            case "good" -> candled(fields, form, Candling.Finding.GOOD);
            case "no-veins" -> candled(fields, form, Candling.Finding.NO_VEINS);
            case "doubtful" -> candled(fields, form, Candling.Finding.DOUBTFUL);
            case "collapsed" -> candled(fields, form, Candling.Finding.COLLAPSED);
            case "slug" -> candled(fields, form, Candling.Finding.SLUG);
            case "lost" ->
                    fields.date("on").map(day -> new EggDeed.Lose(day, form.text("finding")));
            case "box" ->
                    fields.text("box", "Write what stands on the box.")
                            .map(label -> new EggDeed.PutInto(label, form.text("incubator")));
            case "reopen" -> fields.understood(new EggDeed.Reopen());
            default -> fields.faulty("eggs", "Choose what was found or done.");
        };
    }

    private static Fields.Read<EggDeed> candled(
            Fields fields, Form form, Candling.Finding finding) {
        return fields.date("on").map(day -> new EggDeed.Candle(finding, day, form.text("finding")));
    }

    private static Fields.Read<List<EggDeed.Seen>> eggs(Fields fields, Clutch clutch, Form form) {
        var ticked =
                form.texts("egg").stream().flatMap(text -> seen(clutch, text).stream()).toList();
        if (!ticked.isEmpty()) {
            return fields.understood(ticked);
        }
        if (form.text("do").equals("box") && !form.text("first").isEmpty()) {
            var unboxed = unboxed(clutch).toList();
            if (unboxed.isEmpty()) {
                return fields.faulty("first", "Every waiting egg of this clutch is in a box.");
            }
            return fields.whole("first", 1, unboxed.size()).map(count -> unboxed.subList(0, count));
        }
        return fields.faulty("eggs", "Tick the eggs first.");
    }

    private static Stream<EggDeed.Seen> unboxed(Clutch clutch) {
        return clutch.incubating().stream()
                .filter(egg -> egg.box().isEmpty())
                .map(egg -> new EggDeed.Seen(egg.id(), egg.version()));
    }

    /// An egg of this clutch, as `id.version`.
    private static Optional<EggDeed.Seen> seen(Clutch clutch, String text) {
        if (!text.matches("\\d{1,18}\\.\\d{1,18}")) {
            return Optional.empty();
        }
        var point = text.indexOf('.');
        var id = new EggId(Long.parseLong(text.substring(0, point)));
        return clutch.eggs().stream()
                .map(Egg::id)
                .filter(id::equals)
                .findFirst()
                .map(egg -> new EggDeed.Seen(egg, Long.parseLong(text.substring(point + 1))));
    }
}
