package clutchwright.app.labels;

import clutchwright.records.settings.Settings;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/// How the keeper's labels are.
///
/// @param size a common sheet; empty for the keeper's own
/// @param own the keeper's own sheet, kept also while a common one is chosen
/// @param address with which the codes begin, such as `http://192.168.1.20:8420`; empty until
///     one is chosen
record LabelSettings(Optional<SheetSize> size, SheetGeometry own, Optional<String> address) {

    private static final String SIZE = "labels/size";
    private static final String OWN = "labels/own";
    private static final String ADDRESS = "labels/address";
    private static final String OF_ONES_OWN = "OWN";
    private static final int PARTS = 10;

    SheetGeometry geometry() {
        return size.map(SheetSize::geometry).orElse(own);
    }

    static LabelSettings read(Settings settings) {
        var chosen = settings.find(SIZE).orElse(SheetSize.A4_3X8.name());
        return new LabelSettings(
                chosen.equals(OF_ONES_OWN)
                        ? Optional.empty()
                        : Optional.of(
                                Arrays.stream(SheetSize.values())
                                        .filter(size -> size.name().equals(chosen))
                                        .findFirst()
                                        .orElse(SheetSize.A4_3X8)),
                settings.find(OWN)
                        .flatMap(LabelSettings::geometry)
                        .orElse(SheetSize.A4_3X8.geometry()),
                settings.find(ADDRESS));
    }

    void put(Settings settings) {
        settings.put(SIZE, size.map(SheetSize::name).orElse(OF_ONES_OWN));
        settings.put(OWN, text(own));
        address.ifPresentOrElse(
                text -> settings.put(ADDRESS, text), () -> settings.remove(ADDRESS));
    }

    private static String text(SheetGeometry sheet) {
        return DoubleStream.of(
                        sheet.pageWidth(),
                        sheet.pageHeight(),
                        sheet.marginLeft(),
                        sheet.marginTop(),
                        sheet.columns(),
                        sheet.rows(),
                        sheet.labelWidth(),
                        sheet.labelHeight(),
                        sheet.gapAcross(),
                        sheet.gapDown())
                .mapToObj(Double::toString)
                .collect(Collectors.joining(" "));
    }

    /// What somebody else wrote into the store and cannot be read counts as unset.
    private static Optional<SheetGeometry> geometry(String text) {
        try {
            var parts = List.of(text.split(" ", -1)).stream().map(Double::valueOf).toList();
            return parts.size() == PARTS
                    ? Optional.of(
                            new SheetGeometry(
                                    parts.get(0),
                                    parts.get(1),
                                    parts.get(2),
                                    parts.get(3),
                                    parts.get(4).intValue(),
                                    parts.get(5).intValue(),
                                    parts.get(6),
                                    parts.get(7),
                                    parts.get(8),
                                    parts.get(9)))
                    : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
