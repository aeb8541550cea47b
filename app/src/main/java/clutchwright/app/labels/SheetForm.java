package clutchwright.app.labels;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.app.wording.Formats;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URI;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/// The form of the labels' sheet and of the address in their codes.
record SheetForm(Formats formats) {

    static final String OWN = "OWN";

    /// The keeper's own text beside the addresses that are offered.
    static final String ANOTHER = "another";

    private static final double LARGEST_PAGE = 1200;
    private static final int MOST = 60;
    private static final int LONGEST_ADDRESS = 80;

    /// @param offered addresses to choose from
    Form of(LabelSettings settings, List<String> offered) {
        var own = settings.own();
        var values = new LinkedHashMap<String, String>();
        values.put("size", settings.size().map(SheetSize::name).orElse(OWN));
        values.put("page-width", text(own.pageWidth()));
        values.put("page-height", text(own.pageHeight()));
        values.put("columns", Integer.toString(own.columns()));
        values.put("rows", Integer.toString(own.rows()));
        values.put("label-width", text(own.labelWidth()));
        values.put("label-height", text(own.labelHeight()));
        values.put("margin-left", text(own.marginLeft()));
        values.put("margin-top", text(own.marginTop()));
        values.put("gap-across", text(own.gapAcross()));
        values.put("gap-down", text(own.gapDown()));
        var address = settings.address().or(() -> offered.stream().findFirst()).orElse("");
        values.put("network", offered.contains(address) ? address : ANOTHER);
        values.put("address", offered.contains(address) ? "" : address);
        return Form.of(values);
    }

    /// @param now what is not asked for stays as it is
    Entry<LabelSettings> read(Form form, LabelSettings now) {
        var fields = new Fields(form);
        var size =
                Arrays.stream(SheetSize.values())
                        .filter(each -> each.name().equals(form.text("size")))
                        .findFirst();
        if (size.isEmpty() && !form.text("size").equals(OWN)) {
            fields.faulty("size", "Choose one of these.");
        }
        var address = address(fields, form);
        // Numbers of one's own that are not chosen are not asked for.
        var own = size.isPresent() ? fields.understood(now.own()) : own(fields);
        return fields.into(
                () -> new LabelSettings(size, own.value(), Optional.of(address.value())));
    }

    private Fields.Read<SheetGeometry> own(Fields fields) {
        var pageWidth = fields.number("page-width", SheetGeometry.LEAST_WIDTH, LARGEST_PAGE);
        var pageHeight = fields.number("page-height", SheetGeometry.LEAST_HEIGHT, LARGEST_PAGE);
        var columns = fields.whole("columns", 1, MOST);
        var rows = fields.whole("rows", 1, MOST);
        var width = fields.number("label-width", SheetGeometry.LEAST_WIDTH, LARGEST_PAGE);
        var height = fields.number("label-height", SheetGeometry.LEAST_HEIGHT, LARGEST_PAGE);
        var left = fields.number("margin-left", 0, LARGEST_PAGE);
        var top = fields.number("margin-top", 0, LARGEST_PAGE);
        var across = fields.number("gap-across", 0, LARGEST_PAGE);
        var down = fields.number("gap-down", 0, LARGEST_PAGE);
        var read =
                fields.into(
                        () ->
                                new SheetGeometry(
                                        pageWidth.value(),
                                        pageHeight.value(),
                                        left.value(),
                                        top.value(),
                                        columns.value(),
                                        rows.value(),
                                        width.value(),
                                        height.value(),
                                        across.value(),
                                        down.value()));
        return read instanceof Entry.Understood<SheetGeometry>(var sheet)
                ? fitting(fields, sheet)
                : fields.understood(SheetSize.A4_3X8.geometry());
    }

    private Fields.Read<SheetGeometry> fitting(Fields fields, SheetGeometry sheet) {
        if (sheet.overRight() > 0) {
            fields.faulty(
                    sheet.columns() == 1 ? "label-width" : "columns",
                    tooFar(
                            "%s of %s mm, gaps of %s mm and a left margin of %s mm",
                            formats.count(sheet.columns(), "label", "labels"),
                            sheet.labelWidth(),
                            sheet.gapAcross(),
                            sheet.marginLeft(),
                            "wider",
                            sheet.overRight(),
                            sheet.pageWidth()));
        }
        if (sheet.overBottom() > 0) {
            fields.faulty(
                    sheet.rows() == 1 ? "label-height" : "rows",
                    tooFar(
                            "%s of %s mm, gaps of %s mm and a top margin of %s mm",
                            formats.count(sheet.rows(), "row", "rows"),
                            sheet.labelHeight(),
                            sheet.gapDown(),
                            sheet.marginTop(),
                            "taller",
                            sheet.overBottom(),
                            sheet.pageHeight()));
        }
        return fields.understood(sheet);
    }

    private static String tooFar(
            String parts,
            String count,
            double label,
            double gap,
            double margin,
            String way,
            double over,
            double page) {
        return parts.formatted(count, text(label), text(gap), text(margin))
                + " are %s mm %s than the page of %s mm. Fewer of them, or smaller ones."
                        .formatted(text(over), way, text(page));
    }

    private static Fields.Read<String> address(Fields fields, Form form) {
        var isAnother = form.text("network").equals(ANOTHER);
        var typed = (isAnother ? form.text("address") : form.text("network")).replaceAll("/+$", "");
        return isAddress(typed)
                ? fields.understood(typed)
                : fields.faulty(
                        isAnother ? "address" : "network",
                        "Write the beginning of an address that phones can open, such as http://192.168.1.20:8420, without a path"
                                + (typed.isEmpty() ? "." : ", not “" + typed + "”."));
    }

    private static boolean isAddress(String typed) {
        if (typed.length() > LONGEST_ADDRESS || !typed.matches("https?://[\\x21-\\x7e]+")) {
            return false;
        }
        try {
            var uri = URI.create(typed);
            return uri.getHost() != null
                    && uri.getRawPath().isEmpty()
                    && uri.getRawQuery() == null
                    && uri.getRawFragment() == null
                    && uri.getRawUserInfo() == null;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /// As somebody would write it: no more than a hundredth of a millimetre.
    static String text(double millimetres) {
        var plain =
                BigDecimal.valueOf(millimetres)
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros();
        return (plain.signum() == 0 ? BigDecimal.ZERO : plain).toPlainString();
    }
}
