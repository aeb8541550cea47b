package clutchwright.app.catalogue;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Reply;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/// Reads a gene line back while it is typed.
@Controller
public class ReadingPage {

    private final Holding holding;

    ReadingPage(Holding holding) {
        this.holding = holding;
    }

    /// @param form the field's name under `field`, and the line under that name
    @GetMapping("/catalogue/{species}/reading")
    public Reply read(@PathVariable String species, Form form) {
        var field = form.text("field").replaceAll("[^A-Za-z0-9_.-]", "");
        return holding.findLines(species)
                .<Reply>map(lines -> Reply.show(ReadingView.of(lines, field, typed(form, field))))
                .orElseGet(() -> Reply.missing("There is no catalogue named " + species + "."));
    }

    /// As typed: a blank at the end of the line matters to completion.
    private static String typed(Form form, String field) {
        return form.texts(field).stream().findFirst().orElse("");
    }
}
