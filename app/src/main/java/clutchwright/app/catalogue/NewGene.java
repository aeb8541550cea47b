package clutchwright.app.catalogue;

import clutchwright.app.web.Form;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;

/// The short form of a new gene: one locus of one allele.
record NewGene(Form form) {

    /// Where a fault is shown that is about something that the short form does not ask.
    private static final Map<String, String> SHOWN_AT =
            Map.of("title", "a0-head", "f0-head", "a0-head", "c0-when", "a0-head");

    static Form blank(String name) {
        return Form.of(
                Map.of(
                        "a0-head", name,
                        "a0-mode", "recessive",
                        "a0-standing", "unproven",
                        "inherits", "autosomal",
                        "recombination", "1/20",
                        "f0-viability-standing", "unproven",
                        "c0-copies", "1",
                        "c0-standing", "unproven"));
    }

    /// With everything filled in that follows from what was typed.
    LocusSheet sheet() {
        var name = form.text("a0-head");
        var full = form.with("title", name).with("standing", form.text("a0-standing"));
        if (!form.text("f0-name").isEmpty() || !form.text("f0-viability").isEmpty()) {
            full = full.with("f0-head", name + "/" + name).with("f0-name", nameOfTwo(name));
        }
        if (!form.text("c0-head").isEmpty()) {
            full = full.with("c0-when", name + (form.text("c0-copies").equals("2") ? " x2" : ""));
        }
        return new LocusSheet(locus(name), full);
    }

    static String field(String field) {
        return SHOWN_AT.getOrDefault(field, field);
    }

    private String nameOfTwo(String name) {
        if (!form.text("f0-name").isEmpty()) {
            return form.text("f0-name");
        }
        return form.text("a0-mode").equals("incomplete dominant") ? "Super " + name : name;
    }

    private static String locus(String name) {
        var plain = Normalizer.normalize(name, Normalizer.Form.NFD);
        return plain.toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
    }
}
