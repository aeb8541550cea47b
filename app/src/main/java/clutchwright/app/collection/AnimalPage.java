package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.engine.pedigree.AnimalId;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/// One animal: what it is, what it carries and why, what was done with it.
@Controller
public class AnimalPage {

    static final String MISSING = "There is no such animal on record.";

    private final AnimalSheet sheet;

    AnimalPage(Holding holding, Preferring preferring) {
        this.sheet = new AnimalSheet(holding, preferring);
    }

    @GetMapping("/collection/{id:[0-9]{1,18}}")
    public Reply show(@PathVariable long id, Form form) {
        return sheet.view(new AnimalId(id), Form.EMPTY, form.text("ink"))
                .<Reply>map(Reply::show)
                .orElseGet(() -> Reply.missing(MISSING));
    }
}
