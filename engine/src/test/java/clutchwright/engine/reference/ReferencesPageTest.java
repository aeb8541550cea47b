package clutchwright.engine.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Locale;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/// The page of references is what the checks say. To write it anew:
/// `mvn -pl engine test -Dtest=ReferencesPageTest -Dreferences.write=true`.
class ReferencesPageTest {

    private static final Path PAGE = Path.of("..", "docs", "references.md");

    private static final String HEAD =
            """
            # References

            Every check against the world outside, with where its value is from. A test writes this
            page and fails when it is out of date; do not edit it by hand.

            'From memory' means that the value is the source's, but was recalled and not seen there.

            | check | kind | source | where |
            | --- | --- | --- | --- |
            """;

    @Test
    void the_page_lists_every_check_that_cites_a_source() throws Exception {
        var page = HEAD + String.join("", rows().values());
        if (Boolean.getBoolean("references.write")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, page);
        }

        assertThat(PAGE).exists();
        assertThat(Files.readString(PAGE)).isEqualTo(page);
    }

    private static TreeMap<String, String> rows() throws Exception {
        var rows = new TreeMap<String, String>();
        for (var type : allTestClasses()) {
            add(rows, type, words(type.getSimpleName()));
            for (Method method : type.getDeclaredMethods()) {
                add(
                        rows,
                        method,
                        words(type.getSimpleName()) + ": " + method.getName().replace('_', ' '));
            }
        }
        return rows;
    }

    private static void add(TreeMap<String, String> rows, AnnotatedElement element, String check) {
        var reference = element.getAnnotation(Reference.class);
        if (reference != null) {
            var kind = reference.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
            rows.put(
                    check,
                    "| %s | %s | %s | %s |\n"
                            .formatted(
                                    check,
                                    kind,
                                    cell(reference.source()),
                                    cell(reference.locator())));
        }
    }

    /// A bar would end the cell.
    private static String cell(String text) {
        return text.replace("|", "\\|");
    }

    /// `A08_AbOSeriesTest` as `A08 ab o series`.
    private static String words(String className) {
        return className
                .replaceAll("Test$", "")
                .replace('_', ' ')
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ");
    }

    private static ArrayList<Class<?>> allTestClasses()
            throws IOException, URISyntaxException, ClassNotFoundException {
        var root =
                Path.of(
                        ReferencesPageTest.class
                                .getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toURI());
        var types = new ArrayList<Class<?>>();
        try (var files = Files.walk(root)) {
            for (var file : files.filter(path -> path.toString().endsWith("Test.class")).toList()) {
                var name = root.relativize(file).toString().replace(".class", "");
                types.add(
                        Class.forName(
                                name.replace('/', '.').replace('\\', '.'),
                                false,
                                ReferencesPageTest.class.getClassLoader()));
            }
        }
        assertThat(types).contains(ReferencesPageTest.class);
        return types;
    }
}
