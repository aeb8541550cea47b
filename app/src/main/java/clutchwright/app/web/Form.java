package clutchwright.app.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;

/// What a form holds: texts by field, and what is wrong with them.
///
/// A page that posts takes it as a parameter; a view shows it. A field that is absent reads as an
/// empty text.
///
/// @param values by field, as typed
/// @param faults by field, one sentence each, in the order of the fields
public record Form(SequencedMap<String, List<String>> values, SequencedMap<String, String> faults) {

    public static final Form EMPTY = new Form(new LinkedHashMap<>(), new LinkedHashMap<>());

    public Form {
        values = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(values));
        faults = Collections.unmodifiableSequencedMap(new LinkedHashMap<>(faults));
    }

    /// A form that opens with these texts.
    public static Form of(Map<String, String> texts) {
        var values = new LinkedHashMap<String, List<String>>();
        texts.forEach((field, text) -> values.put(field, List.of(text)));
        return new Form(values, new LinkedHashMap<>());
    }

    /// What the end of an address asks for, as a form that was sent by it.
    public static Form ofAddress(String address) {
        var values = new LinkedHashMap<String, List<String>>();
        var end = address.indexOf('?');
        for (var pair : end < 0 ? new String[0] : address.substring(end + 1).split("&")) {
            var parts = pair.split("=", 2);
            if (parts.length == 2) {
                values.computeIfAbsent(decoded(parts[0]), _ -> new ArrayList<>())
                        .add(decoded(parts[1]));
            }
        }
        return new Form(values, new LinkedHashMap<>());
    }

    private static String decoded(String part) {
        try {
            return URLDecoder.decode(part, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            // A % that means nothing: the text stands for itself.
            return part;
        }
    }

    /// The text of the field without blanks around it; empty where there is none.
    public String text(String field) {
        return values.getOrDefault(field, List.of()).stream().findFirst().orElse("").strip();
    }

    /// All texts of a field that may occur more than once.
    public List<String> texts(String field) {
        return List.copyOf(values.getOrDefault(field, List.of()));
    }

    public boolean has(String field, String text) {
        return texts(field).contains(text);
    }

    /// What is wrong with the field; empty where nothing is.
    public String fault(String field) {
        return faults.getOrDefault(field, "");
    }

    public boolean isFaulty() {
        return !faults.isEmpty();
    }

    public Form with(String field, String text) {
        var more = new LinkedHashMap<>(values);
        more.put(field, List.of(text));
        return new Form(more, faults);
    }

    public Form withFault(String field, String sentence) {
        var more = new LinkedHashMap<>(faults);
        more.putIfAbsent(field, sentence);
        return new Form(values, more);
    }

    /// The ids of what describes a field, in the order in which it is read out.
    public static String describedBy(String field, String hint, String fault) {
        var ids = new ArrayList<String>();
        if (!fault.isEmpty()) {
            ids.add(field + "-fault");
        }
        if (!hint.isEmpty()) {
            ids.add(field + "-hint");
        }
        return String.join(" ", ids);
    }
}
