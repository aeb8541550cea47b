package clutchwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;

/// A posted form becomes a value, or comes back with every fault.
class FieldsTest {

    @Test
    void a_form_without_fault_becomes_its_value() {
        var fields = new Fields(Form.of(Map.of("day", "2026-06-14", "eggs", " 7 ", "kg", "1,5")));
        var day = fields.date("day");
        var eggs = fields.whole("eggs", 1, 40);
        var weight = fields.number("kg", 0, 9);

        assertThat(fields.into(() -> new Laid(day.value(), eggs.value(), weight.value())))
                .isEqualTo(new Entry.Understood<>(new Laid(LocalDate.of(2026, 6, 14), 7, 1.5)));
    }

    @Test
    void every_fault_is_named_at_once_and_what_was_typed_stays() {
        var fields =
                new Fields(
                        Form.of(Map.of("day", "14.6.", "eggs", "many", "kg", "NaN", "tag", " ")));
        var day = fields.date("day");
        fields.whole("eggs", 1, 40);
        fields.number("kg", 0, 9);
        fields.text("tag", "Write the tag.");

        assertThat(fields.into(day::value))
                .isInstanceOfSatisfying(
                        Entry.Faulty.class,
                        faulty -> {
                            assertThat(faulty.form().faults().keySet())
                                    .containsExactlyInAnyOrder("day", "eggs", "kg", "tag");
                            assertThat(faulty.form().text("eggs")).isEqualTo("many");
                            assertThat(faulty.form().fault("eggs"))
                                    .isEqualTo("Write a whole number from 1 to 40, not “many”.");
                        });
    }

    @Test
    void a_day_that_may_be_left_out_is_empty_when_it_is() {
        var fields = new Fields(Form.EMPTY);
        assertThat(fields.anyDate("day").value()).isEmpty();
    }

    private record Laid(LocalDate day, int eggs, double weight) {}
}
