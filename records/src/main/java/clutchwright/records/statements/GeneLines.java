package clutchwright.records.statements;

import clutchwright.engine.genetics.LocusId;
import java.util.List;
import java.util.stream.Collectors;

/// Mentions as they are kept, one a line: `shown clown Clown`, `carried piebald Piebald`.
final class GeneLines {

    private GeneLines() {}

    static String write(List<Mention> mentions) {
        return mentions.stream()
                .map(
                        mention ->
                                (mention.shown() ? "shown " : "carried ")
                                        + mention.locus()
                                        + " "
                                        + mention.allele())
                .collect(Collectors.joining("\n"));
    }

    static List<Mention> read(String text) {
        return text.lines()
                .map(line -> line.split(" ", 3))
                .map(
                        parts ->
                                new Mention(
                                        new LocusId(parts[1]), parts[2], parts[0].equals("shown")))
                .toList();
    }
}
