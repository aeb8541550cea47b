package clutchwright.records.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.dhatim.fastexcel.Workbook;

/// Writes those example files that cannot be typed: run `main` in the folder of the project.
final class ExampleWorkbooks {

    private ExampleWorkbooks() {}

    public static void main(String[] arguments) throws IOException {
        var folder = Path.of(arguments.length > 0 ? arguments[0] : "examples");
        try (var out = Files.newOutputStream(folder.resolve("two-gene-columns.xlsx"))) {
            twoGeneColumns(out);
        }
        try (var out = Files.newOutputStream(folder.resolve("with-title-rows.xlsx"))) {
            withTitleRows(out);
        }
        Files.writeString(folder.resolve("three-hundred.csv"), ThreeHundred.asText());
    }

    static void twoGeneColumns(OutputStream out) throws IOException {
        try (var workbook = new Workbook(out, "clutchwright", "1.0")) {
            var page = workbook.newWorksheet("Animals");
            rows(
                    List.of(
                            List.of(
                                    "#",
                                    "Sex",
                                    "Hatch Year",
                                    "Visual",
                                    "Hets",
                                    "66% het",
                                    "Rack/Tub"),
                            List.of("1", "F", "2019", "Pastel", "Clown", "", "A / 1"),
                            List.of("2", "M", "2018", "Clown", "", "", "B / 1"),
                            List.of("3", "F", "2020", "Mojave", "Piebald, Ghost", "", "A / 2"),
                            List.of("4", "M", "2020", "Banana", "100% Piebald", "Ghost", "B / 2"),
                            List.of("5", "F", "2021", "", "het Clown", "Piebald", "A / 3"),
                            List.of("6", "F", "2021", "Super Enchi", "none", "", "A / 4")),
                    page,
                    0);
            page.finish();
        }
    }

    static void withTitleRows(OutputStream out) throws IOException {
        try (var workbook = new Workbook(out, "clutchwright", "1.0")) {
            var page = workbook.newWorksheet("Stock list");
            page.value(0, 0, "Stock list");
            page.value(1, 0, "for the insurance, all animals in the house");
            rows(
                    List.of(
                            List.of(
                                    "Animal ID",
                                    "Gender",
                                    "Date of birth",
                                    "Morph",
                                    "Sire ID",
                                    "Dam ID",
                                    "Status",
                                    "Weight",
                                    "Value"),
                            List.of("B1", "m", "", "Pastel Enchi", "", "", "active", "", ""),
                            List.of("B2", "f", "", "Black Pastel", "", "", "active", "", ""),
                            List.of("B3", "f", "", "Pastel", "B1", "B2", "active", "", "")),
                    page,
                    3);
            for (int i = 0; i < 3; i++) {
                page.value(4 + i, 2, LocalDate.of(2016 + 2 * i, 7, 11 + i));
                page.style(4 + i, 2).format("dd/mm/yyyy").set();
                page.value(4 + i, 7, 900 + 150 * i);
                page.value(4 + i, 8, 100);
            }
            page.finish();
            var old = workbook.newWorksheet("Sold");
            rows(List.of(List.of("Animal ID", "Gender"), List.of("S1", "f")), old, 0);
            old.finish();
        }
    }

    private static void rows(
            List<List<String>> rows, org.dhatim.fastexcel.Worksheet page, int first) {
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).size(); column++) {
                var cell = rows.get(row).get(column);
                if (cell.matches("[1-9][0-9]*")) {
                    page.value(first + row, column, Integer.parseInt(cell));
                } else if (!cell.isEmpty()) {
                    page.value(first + row, column, cell);
                }
            }
        }
    }
}
