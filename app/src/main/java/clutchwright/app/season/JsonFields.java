package clutchwright.app.season;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SequencedMap;
import java.util.Set;
import java.util.stream.IntStream;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// Reads the fields of a JSON document, each by its pointer (RFC 6901), and gathers everything that
/// is wrong with them.
final class JsonFields {

    private static final JsonMapper JSON =
            JsonMapper.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    private final JsonNode root;
    private final List<String> faults = new ArrayList<>();

    private JsonFields(JsonNode root) {
        this.root = root;
    }

    static JsonFields of(String text) {
        try {
            var read = new JsonFields(JSON.readTree(text));
            if (!read.root.isObject()) {
                read.faults.add("expected one JSON object in braces.");
            }
            return read;
        } catch (JacksonException e) {
            var none = new JsonFields(JSON.createObjectNode());
            var at = e.getLocation();
            none.faults.add(
                    at == null
                            ? "this is not JSON."
                            : "line %d, column %d: this is not JSON, or a field stands twice."
                                    .formatted(at.getLineNr(), at.getColumnNr()));
            return none;
        }
    }

    JsonNode root() {
        return root;
    }

    boolean isSound() {
        return faults.isEmpty();
    }

    List<String> faults() {
        return List.copyOf(faults);
    }

    void fault(String at, String expected) {
        var found = root.at(at);
        faults.add(
                "%s: expected %s%s."
                        .formatted(
                                at,
                                expected,
                                found.isMissingNode() ? "; it is missing" : ", not " + found));
    }

    boolean has(JsonNode from, String at) {
        return !from.at(at).isMissingNode() && !from.at(at).isNull();
    }

    boolean object(JsonNode from, String at) {
        var fits = !has(from, at) || from.at(at).isObject();
        if (!fits) {
            fault(at, "an object in braces");
        }
        return fits;
    }

    /// No other fields than these.
    void only(JsonNode from, String at, String... known) {
        var names = Set.of(known);
        for (var name : from.at(at).propertyNames()) {
            if (!names.contains(name)) {
                faults.add(
                        "%s/%s: there is no such field; there are %s."
                                .formatted(at, name, String.join(", ", known)));
            }
        }
    }

    Optional<LocalDate> day(JsonNode from, String at, boolean required) {
        if (!has(from, at)) {
            if (required && from.isObject()) {
                fault(at, "a day such as 2024-02-01");
            }
            return Optional.empty();
        }
        try {
            if (from.at(at).isString()) {
                return Optional.of(LocalDate.parse(from.at(at).stringValue()));
            }
        } catch (DateTimeParseException e) {
            // Told below.
        }
        fault(at, "a day such as 2024-02-01");
        return Optional.empty();
    }

    List<LocalDate> days(JsonNode from, String at) {
        return list(from, at).stream().flatMap(each -> day(from, each, true).stream()).toList();
    }

    /// The pointers to the elements of a list; none where there is no list.
    List<String> list(JsonNode from, String at) {
        if (!has(from, at)) {
            return List.of();
        }
        if (!from.at(at).isArray()) {
            fault(at, "a list in brackets");
            return List.of();
        }
        return IntStream.range(0, from.at(at).size()).mapToObj(i -> at + "/" + i).toList();
    }

    boolean yesNo(JsonNode from, String at) {
        if (has(from, at) && !from.at(at).isBoolean()) {
            fault(at, "true or false");
        }
        return has(from, at) && from.at(at).isBoolean() && from.at(at).booleanValue();
    }

    OptionalDouble number(JsonNode from, String at, double least, double most) {
        if (!has(from, at)) {
            return OptionalDouble.empty();
        }
        if (from.at(at).isNumber()) {
            var value = from.at(at).doubleValue();
            if (value >= least && value <= most) {
                return OptionalDouble.of(value);
            }
        }
        fault(at, range(least, most));
        return OptionalDouble.empty();
    }

    /// Blank where it is missing, which is a fault if it is required.
    String text(String at, boolean required) {
        if (!has(root, at)) {
            if (required) {
                fault(at, "a text");
            }
            return "";
        }
        if (!root.at(at).isString() || (required && root.at(at).stringValue().isBlank())) {
            fault(at, "a text");
            return "";
        }
        return root.at(at).stringValue();
    }

    /// The numbers of an object by their names; none where there is no object.
    SequencedMap<String, Double> numbers(String at, double least, double most) {
        var numbers = new LinkedHashMap<String, Double>();
        if (has(root, at) && object(root, at)) {
            for (var name : root.at(at).propertyNames()) {
                var pointer = at + "/" + name.replace("~", "~0").replace("/", "~1");
                numbers.put(name, required(root, pointer, least, most));
            }
        }
        return numbers;
    }

    /// Not a number where it is missing or wrong, which is a fault.
    double required(JsonNode from, String at, double least, double most) {
        var found = number(from, at, least, most);
        if (found.isEmpty() && !has(from, at)) {
            fault(at, range(least, most));
        }
        return found.orElse(Double.NaN);
    }

    private static String range(double least, double most) {
        return least == Double.MIN_VALUE
                ? "a number above 0"
                : String.format(Locale.ENGLISH, "a number from %.0f to %.0f", least, most);
    }
}
