package clutchwright.engine.notation;

import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;

/// A table of lines and what they are to be read as, with `=>` between, one case a row.
final class Table {

    private Table() {}

    static Stream<Arguments> of(String rows) {
        return rows.lines()
                .map(String::strip)
                .filter(row -> !row.isEmpty() && !row.startsWith("#"))
                .map(row -> row.split("=>", -1))
                .map(sides -> Arguments.of(sides[0].strip(), sides[1].strip()));
    }
}
