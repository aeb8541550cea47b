package clutchwright.app.season;

import static java.nio.charset.StandardCharsets.UTF_8;

import clutchwright.app.web.Form;
import java.net.URLEncoder;
import java.util.List;
import java.util.stream.Collectors;

/// Addresses of predictions.
final class Address {

    static final String PREDICT = "/season/predict";

    private Address() {}

    /// The address of a page that asks the same; blank fields are left out.
    static String of(Form form) {
        var query =
                form.values().entrySet().stream()
                        .flatMap(
                                field ->
                                        field.getValue().stream()
                                                .filter(text -> !text.isBlank())
                                                .map(text -> part(field.getKey(), text)))
                        .collect(Collectors.joining("&"));
        return query.isEmpty() ? PREDICT : PREDICT + "?" + query;
    }

    /// The fields of one dam and one sire alone, whichever sire it was on the form.
    ///
    /// @param sire `""`, `2` or `3`
    static String ofPair(Form form, String sire, String species) {
        var pair = Form.EMPTY.with("species", species);
        for (var field : List.of("damTag", "damLine", "eggs")) {
            pair = pair.with(field, form.text(field));
        }
        return of(
                pair.with("sireTag", form.text("sireTag" + sire))
                        .with("sireLine", form.text("sireLine" + sire)));
    }

    private static String part(String field, String text) {
        return URLEncoder.encode(field, UTF_8) + "=" + URLEncoder.encode(text.strip(), UTF_8);
    }
}
