package clutchwright.app.labels;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/// What comes of printing, told before it is done.
///
/// @param missing signs that the font lacks
/// @param replaced how many labels have such signs
/// @param cut how many labels have not room for all of their words
/// @param finest the smallest module of a code, in millimetres
public record PrintJob(
        SheetGeometry sheet,
        int labels,
        int first,
        Set<String> missing,
        int replaced,
        int cut,
        double finest) {

    public PrintJob {
        missing = Collections.unmodifiableSet(new LinkedHashSet<>(missing));
    }

    /// From below a third of a millimetre on, old phones have to come close: common practice.
    static final double FINE = 0.33;

    static PrintJob of(SheetGeometry sheet, List<Label> labels, int first) {
        var layout = LabelLayout.of(sheet);
        var missing = new LinkedHashSet<String>();
        var replaced = 0;
        var cut = 0;
        var modules = 1;
        try (var type = TypeCase.open()) {
            for (var label : labels) {
                var lacking = lacking(type, label);
                missing.addAll(lacking);
                replaced += lacking.isEmpty() ? 0 : 1;
                cut += layout.set(type, label).cut() ? 1 : 0;
            }
        }
        for (var label : labels) {
            modules = Math.max(modules, QrSquare.of(label.address()).modules());
        }
        return new PrintJob(
                sheet, labels.size(), first, missing, replaced, cut, layout.qrSide() / modules);
    }

    public int sheets() {
        return sheet.sheets(labels, first);
    }

    public boolean isFine() {
        return finest < FINE;
    }

    private static Set<String> lacking(TypeCase type, Label label) {
        var lacking = new LinkedHashSet<String>();
        Stream.concat(Stream.of(label.head(), label.second()), label.lines().stream())
                .forEach(text -> lacking.addAll(type.plain().missingIn(text)));
        return lacking;
    }
}
