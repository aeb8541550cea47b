package clutchwright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.regex.Pattern;

/// The program toulbar2, asked for the total of a network, where it is installed.
final class Toulbar {

    private static final Pattern TOTAL =
            Pattern.compile("<= Log\\(Z\\) <= (\\S+) in .* (\\S+) seconds");

    private Toulbar() {}

    /// A line about what it found and how long it says it took.
    static String logTotal(BreederPedigrees pedigree, BreederNetwork ours, double milliseconds)
            throws IOException {
        var file = Files.createTempFile("network", ".uai");
        try {
            Files.writeString(file, uai(pedigree, ours));
            var process =
                    new ProcessBuilder("toulbar2", file.toString(), "-logz", "-B=0", "-timer=60")
                            .redirectErrorStream(true)
                            .start();
            var text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            var match = TOTAL.matcher(text);
            if (!match.find()) {
                return "toulbar2 gave no total within 60 seconds";
            }
            var theirs = 1000 * Double.parseDouble(match.group(2));
            return "%.0f ms  toulbar2, the total alone: log total %s, %.0f times"
                    .formatted(theirs, match.group(1), theirs / milliseconds);
        } catch (IOException e) {
            return "toulbar2 is not installed, so it was not asked (" + e.getMessage() + ")";
        } finally {
            Files.delete(file);
        }
    }

    /// The network in the UAI format of its competitions.
    private static String uai(BreederPedigrees pedigree, BreederNetwork ours) {
        List<String> scopes = new ArrayList<>();
        List<String> tables = new ArrayList<>();
        for (var animal = 1; animal <= pedigree.animals; animal++) {
            var own = animal - 1;
            if (pedigree.sires[animal] == 0) {
                scopes.add("1 " + own);
                tables.add(text(ours.founder(animal)));
            } else {
                var dam = pedigree.dams[animal] - 1;
                scopes.add("3 " + dam + " " + (pedigree.sires[animal] - 1) + " " + own);
                tables.add(text(ours.mendel));
            }
            if (pedigree.isRecorded[0][animal]) {
                scopes.add("1 " + own);
                tables.add(text(ours.look(pedigree.looks[0][animal])));
            }
        }
        return "MARKOV\n%d\n%s\n%d\n%s\n%s\n"
                .formatted(
                        pedigree.animals,
                        (ours.genotypes + " ").repeat(pedigree.animals),
                        scopes.size(),
                        String.join("\n", scopes),
                        String.join("\n", tables));
    }

    private static String text(double... table) {
        var text = new StringJoiner(" ", table.length + "\n", "");
        for (var weight : table) {
            text.add(Double.toString(weight));
        }
        return text.toString();
    }
}
