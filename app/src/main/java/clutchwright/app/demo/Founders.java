package clutchwright.app.demo;

import clutchwright.engine.genetics.Sex;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/// The animals that the invented house began with, as its file lists them.
record Founders(List<Founder> all) {

    /// @param unknown a gene line that is true and that nobody knows; may be blank
    record Founder(
            String tag,
            String name,
            Sex sex,
            int years,
            String from,
            String stated,
            String unknown) {}

    Founders {
        all = List.copyOf(all);
    }

    static Founders read() {
        return new Founders(
                text("founders.txt")
                        .lines()
                        .filter(line -> !line.isBlank() && !line.startsWith("#"))
                        .map(Founders::founder)
                        .toList());
    }

    /// A file of the invented house.
    static String text(String name) {
        var file = "/clutchwright/app/demo/" + name;
        try (var in = Founders.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks " + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    private static Founder founder(String line) {
        var parts = line.split("\\|", -1);
        return new Founder(
                parts[0].strip(),
                parts[1].strip(),
                Sex.valueOf(parts[2].strip().toUpperCase(Locale.ROOT)),
                Integer.parseInt(parts[3].strip()),
                parts[4].strip(),
                parts[5].strip(),
                parts[6].strip());
    }
}
