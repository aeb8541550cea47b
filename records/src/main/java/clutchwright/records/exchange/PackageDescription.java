package clutchwright.records.exchange;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import tools.jackson.databind.json.JsonMapper;

/// The `datapackage.json` of a package, as the Frictionless Data Package (version 1) has it.
final class PackageDescription {

    /// By which a package of our own is known.
    static final String MARK = "clutchwrightPackage";

    static final int VERSION = 1;

    private PackageDescription() {}

    static String of(LocalDate day, List<PackageExport.Described> files) {
        var description = new LinkedHashMap<String, Object>();
        description.put("profile", "tabular-data-package");
        description.put("name", "clutchwright-collection");
        description.put("created", day + "T00:00:00Z");
        description.put(MARK, VERSION);
        description.put("resources", files.stream().map(PackageDescription::resource).toList());
        return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(description)
                + "\n";
    }

    private static Map<String, Object> resource(PackageExport.Described file) {
        var resource = new LinkedHashMap<String, Object>();
        resource.put("name", file.file().replace(".csv", ""));
        resource.put("path", file.file());
        resource.put("profile", "tabular-data-resource");
        resource.put("format", "csv");
        resource.put("mediatype", "text/csv");
        resource.put("encoding", "utf-8");
        var fields =
                IntStream.range(0, file.headings().size())
                        .mapToObj(i -> field(file.headings().get(i), file.types().get(i)))
                        .toList();
        var schema = new LinkedHashMap<String, Object>();
        schema.put("fields", fields);
        resource.put("schema", schema);
        return resource;
    }

    private static Map<String, Object> field(String name, String type) {
        var field = new LinkedHashMap<String, Object>();
        field.put("name", name);
        field.put("type", type);
        if (type.equals("boolean")) {
            field.put("trueValues", List.of("yes"));
            field.put("falseValues", List.of("no"));
        }
        return field;
    }

    /// Whether a description is of a package that we wrote.
    static boolean isOurs(String json) {
        try {
            return JsonMapper.shared().readTree(json).path(MARK).asInt(0) == VERSION;
        } catch (tools.jackson.core.JacksonException noJson) {
            return false;
        }
    }
}
