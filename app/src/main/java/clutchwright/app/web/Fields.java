package clutchwright.app.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/// Reads a posted form field by field and gathers every fault, then builds the value if there is
/// none.
///
/// ```java
/// var fields = new Fields(form);
/// var tag = fields.text("tag", "Write the tag as it stands on the tub.");
/// var eggs = fields.whole("eggs", 1, 40);
/// return fields.into(() -> new Laid(tag.value(), eggs.value()));
/// ```
public final class Fields {

    private final Form form;
    private final LinkedHashMap<String, String> faults;

    public Fields(Form form) {
        this.form = form;
        this.faults = new LinkedHashMap<>(form.faults());
    }

    /// A text that must be there.
    public Read<String> text(String field, String ifMissing) {
        var text = form.text(field);
        return text.isEmpty() ? faulty(field, ifMissing) : new Read<>(text);
    }

    /// A text that may be left out.
    public Read<String> text(String field) {
        return new Read<>(form.text(field));
    }

    /// A whole number within bounds.
    public Read<Integer> whole(String field, int least, int most) {
        try {
            var number = Integer.parseInt(form.text(field));
            if (number >= least && number <= most) {
                return new Read<>(number);
            }
        } catch (NumberFormatException e) {
            // said below, as is a number out of bounds
        }
        return faulty(
                field,
                "Write a whole number from %d to %d%s.".formatted(least, most, butFound(field)));
    }

    /// A number within bounds; a comma is read as a point.
    public Read<Double> number(String field, double least, double most) {
        try {
            var number = Double.parseDouble(form.text(field).replace(',', '.'));
            if (number >= least && number <= most) {
                return new Read<>(number);
            }
        } catch (NumberFormatException e) {
            // said below, as is a number out of bounds
        }
        return faulty(
                field,
                String.format(
                        Locale.ENGLISH,
                        "Write a number from %s to %s%s.",
                        plain(least),
                        plain(most),
                        butFound(field)));
    }

    /// A day that must be there, as the browser's date field sends it: `2026-06-14`.
    public Read<LocalDate> date(String field) {
        try {
            return new Read<>(LocalDate.parse(form.text(field)));
        } catch (DateTimeParseException e) {
            return faulty(
                    field,
                    "Write a day as year-month-day, such as 2026-06-14%s."
                            .formatted(butFound(field)));
        }
    }

    /// A day that may be left out.
    public Read<Optional<LocalDate>> anyDate(String field) {
        return form.text(field).isEmpty()
                ? new Read<>(Optional.empty())
                : date(field).map(Optional::of);
    }

    /// One of an enum's members, as [Enum#name].
    public <E extends Enum<E>> Read<E> choice(String field, Class<E> type) {
        for (var member : type.getEnumConstants()) {
            if (member.name().equals(form.text(field))) {
                return new Read<>(member);
            }
        }
        return faulty(field, "Choose one of these.");
    }

    /// What the page itself understood of a field.
    public <T> Read<T> understood(T value) {
        return new Read<>(value);
    }

    public boolean ticked(String field) {
        return !form.texts(field).isEmpty();
    }

    /// Records a fault that the page itself found.
    public <T> Read<T> faulty(String field, String sentence) {
        faults.putIfAbsent(field, sentence);
        return new Read<>(null);
    }

    /// The value if every field was understood, else the form with all its faults.
    public <T> Entry<T> into(Supplier<T> value) {
        return faults.isEmpty()
                ? new Entry.Understood<>(value.get())
                : new Entry.Faulty<>(new Form(form.values(), faults));
    }

    private String butFound(String field) {
        var text = form.text(field);
        return text.isEmpty() ? "" : ", not “" + text + "”";
    }

    private static String plain(double bound) {
        return bound % 1 == 0 ? Long.toString((long) bound) : Double.toString(bound);
    }

    /// A field that was read, or was faulty.
    public static final class Read<T> {

        private final @Nullable T value;

        private Read(@Nullable T value) {
            this.value = value;
        }

        /// @throws IllegalStateException if the field was faulty; [Fields#into] asks only where
        ///     none was
        public T value() {
            if (value == null) {
                throw new IllegalStateException("a faulty field was asked for its value");
            }
            return value;
        }

        public <R> Read<R> map(Function<T, R> function) {
            return new Read<>(value == null ? null : function.apply(value));
        }
    }
}
