package clutchwright.app.collection;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;

/// All animals: found as one types, filtered, sorted, page by page.
@Controller
public class CollectionPage {

    private final Holding holding;
    private final Listing listing;

    CollectionPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.listing = new Listing(holding, preferring);
    }

    @GetMapping("/collection")
    public Reply list(Form form) {
        return Reply.show(listing.view(form, Form.EMPTY));
    }

    /// Changes status or place of all ticked animals at once, or of none.
    @PostMapping("/collection/together")
    public Reply change(Form form) {
        return new Together(holding, listing).change(form);
    }

    /// Saves the filters in force under a name; the same name again replaces them.
    @PostMapping("/collection/filters")
    public Reply save(Form form) {
        var name = form.text("name");
        var end = form.text("end");
        if (!end.startsWith("?")) {
            return Reply.go("/collection").saying("Not saved: nothing is filtered.");
        }
        if (name.isEmpty() || name.length() > SavedFilter.LONGEST_NAME) {
            return Reply.go("/collection" + end)
                    .saying(
                            "Not saved: give the filters a name of 1 to %d characters."
                                    .formatted(SavedFilter.LONGEST_NAME));
        }
        var written =
                Written.to(
                        holding,
                        "Saved the filters “" + name + "”",
                        tx -> {
                            new SavedFilter(name, end).keep(tx);
                            return name;
                        });
        return written.going("/collection" + end, "Filters saved as “" + name + "”.");
    }

    @PostMapping("/collection/filters/remove")
    public Reply forget(Form form) {
        var name = form.text("name");
        var written =
                Written.to(
                        holding,
                        "Removed the filters “" + name + "”",
                        tx -> {
                            SavedFilter.forget(tx, name);
                            return name;
                        });
        return written.going("/collection", "Filters “" + name + "” removed.");
    }
}
